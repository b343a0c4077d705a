namespace Doughwright.Engine.Ingredients;

/// <summary>By which rules a label is printed.</summary>
public enum LabelForm
{
    /// <summary>Carbohydrate without fibre: European Union, Britain, Australia.</summary>
    European,

    /// <summary>Total carbohydrate, fibre included.</summary>
    UnitedStates,
}
