namespace Doughwright.Engine.Quantities;

/// <summary>Why a text is not a quantity. One reason each, so that a person can be told exactly what to change.</summary>
public enum QuantityFault
{
    /// <summary>Nothing is written.</summary>
    Empty,

    /// <summary>No number stands where one is needed: "some".</summary>
    NumberMissing,

    /// <summary>"010 g": ten, or eight, or a slip of the finger.</summary>
    LeadingZero,

    /// <summary>"7,5 g": the decimal mark is a point; a comma only groups thousands.</summary>
    DecimalComma,

    /// <summary>"12:30": hours and minutes, minutes and seconds, or a time of day.</summary>
    ClockTime,

    /// <summary>"1/2 lb": fractions are written with a point.</summary>
    Fraction,

    /// <summary>".5 g", "5. g", "1e3 g", "+5 g": not a plain number.</summary>
    NumberNotPlain,

    /// <summary>"2.5" where things are counted.</summary>
    NotWhole,

    /// <summary>More digits than a measurement can have.</summary>
    TooManyDigits,

    /// <summary>"7": a number without its unit.</summary>
    UnitMissing,

    /// <summary>"7 gr": a unit that is not known.</summary>
    UnitUnknown,

    /// <summary>"7 cm" where a weight is needed.</summary>
    UnitOfAnotherKind,

    /// <summary>Below zero where nothing can be. Understood, but wrong.</summary>
    Negative,

    /// <summary>"7 g or so": more stands behind the quantity than belongs to it.</summary>
    MoreThanAQuantity,
}
