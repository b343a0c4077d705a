namespace Doughwright.Engine.Rehearsals.Warming;

/// <summary>Why no place is worked out for a step.</summary>
public enum PlaceRefusal
{
    /// <summary>It is no rise, or the dough's temperature, yeast or composition is not known. Findings say which.</summary>
    NotKnown,

    /// <summary>At the temperature asked for the step never comes to its end.</summary>
    NeverEnds,

    /// <summary>The dough is as far as it should be when the step begins.</summary>
    OverAtOnce,

    /// <summary>It would take more than a day, and nobody keeps a place for so long.</summary>
    LongerThanADay,
}
