namespace Doughwright.Publishing.Pictures.Drawing;

/// <summary>The faces that stand in pictures.</summary>
internal enum Face
{
    /// <summary>Sofia Sans Semi Condensed 400: values, axes, notes.</summary>
    Label,

    /// <summary>Sofia Sans Semi Condensed 680: names and heads.</summary>
    LabelBold,

    /// <summary>Brygada 1918 italic 400: what a person sees.</summary>
    Cue,

    /// <summary>Brygada 1918 600: figures beside ribbons.</summary>
    Figures,
}
