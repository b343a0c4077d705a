namespace Doughwright.Publishing.Pictures.Drawing;

/// <summary>The mark of a finding, told apart by shape and not by colour.</summary>
public enum MarkShape
{
    /// <summary>A full square: what is written cannot be right.</summary>
    Wrong,

    /// <summary>A dashed square: something is not there.</summary>
    Missing,

    /// <summary>A triangle: it may go wrong, or do harm.</summary>
    Risky,

    /// <summary>A circle: worth knowing.</summary>
    Note,
}
