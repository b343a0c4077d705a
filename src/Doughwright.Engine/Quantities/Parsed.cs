namespace Doughwright.Engine.Quantities;

/// <summary>What came of reading a quantity: the value, or one reason why there is none.</summary>
public readonly record struct Parsed<T> where T : struct
{
    /// <summary>The value, or null with a <see cref="Fault"/>.</summary>
    public T? Value { get; private init; }

    public QuantityFault? Fault { get; private init; }

    /// <summary>The text that was read, trimmed.</summary>
    public string Typed { get; private init; }

    /// <summary>The piece of it that is at fault: the number, the unit or what stands behind.</summary>
    public string Piece { get; private init; }

    /// <summary>What it would be if the nearest right spelling was meant. Offered, never taken.</summary>
    public string? Offer { get; private init; }

    public bool Ok => Value is not null;

    internal static Parsed<T> Of(T value, string typed) => new() { Value = value, Typed = typed, Piece = typed };

    internal static Parsed<T> Not(QuantityFault fault, string typed, string piece, string? offer = null) =>
        new() { Fault = fault, Typed = typed, Piece = piece, Offer = offer };

    internal Parsed<TOther> To<TOther>(Func<T, TOther> convert) where TOther : struct => Value is { } value
        ? Parsed<TOther>.Of(convert(value), Typed)
        : Parsed<TOther>.Not(Fault ?? QuantityFault.Empty, Typed, Piece, Offer);
}
