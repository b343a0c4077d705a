namespace Doughwright.Engine.Ingredients;

/// <summary>The three forms baker's yeast is sold in.</summary>
public enum YeastKind
{
    Fresh,
    ActiveDry,
    Instant,
}
