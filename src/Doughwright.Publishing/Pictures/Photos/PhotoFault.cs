namespace Doughwright.Publishing.Pictures.Photos;

/// <summary>Why a file is not taken as a photo.</summary>
internal enum PhotoFault
{
    /// <summary>It has more bytes than are looked at.</summary>
    TooLarge,

    /// <summary>A drawing made of text, which can hold a script.</summary>
    Drawing,

    /// <summary>It does not begin as a JPEG, PNG or WebP does.</summary>
    OtherKind,

    /// <summary>Its head says more pixels than are decoded.</summary>
    TooManyPixels,

    /// <summary>It ends early, or what is in it cannot be read.</summary>
    Damaged,
}
