namespace Doughwright.Engine.Ingredients;

/// <summary>Where somebody shops. It decides what a name or a pack means, where it means different things in different places.</summary>
public enum Region
{
    Britain,
    UnitedStates,
    Australia,
    Germany,
    Austria,
    France,
    Italy,
}
