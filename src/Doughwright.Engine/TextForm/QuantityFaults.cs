using Doughwright.Engine.Quantities;

namespace Doughwright.Engine.TextForm;

/// <summary>Kinds of findings about a written quantity: one for each reason of <see cref="QuantityFault"/>.</summary>
public static class QuantityFaults
{
    /// <summary>The kind under which the words of the program explain a reason. The command line uses the same words.</summary>
    public static string KindOf(QuantityFault fault) => fault switch
    {
        QuantityFault.Empty => "quantity-missing",
        QuantityFault.NumberMissing => "number-missing",
        QuantityFault.LeadingZero => "leading-zero",
        QuantityFault.DecimalComma => "decimal-comma",
        QuantityFault.ClockTime => "clock-time",
        QuantityFault.Fraction => "fraction",
        QuantityFault.NumberNotPlain => "number-not-plain",
        QuantityFault.NotWhole => "number-not-whole",
        QuantityFault.TooManyDigits => "too-many-digits",
        QuantityFault.UnitMissing => "unit-missing",
        QuantityFault.UnitUnknown => "unit-unknown",
        QuantityFault.UnitOfAnotherKind => "unit-of-another-kind",
        QuantityFault.Negative => "negative-quantity",
        QuantityFault.MoreThanAQuantity => "more-than-a-quantity",
        _ => throw new ArgumentOutOfRangeException(nameof(fault), fault, "Not a fault of a quantity."),
    };
}
