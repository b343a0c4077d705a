namespace Doughwright.Publishing.Pictures.Files;

/// <summary>What a picture stands on.</summary>
internal enum Ground
{
    /// <summary>Paper.</summary>
    Light,

    Dark,

    /// <summary>Nothing: what lies behind it shows through. Its inks are those for a light ground.</summary>
    None,
}
