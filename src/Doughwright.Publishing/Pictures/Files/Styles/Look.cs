using System.Globalization;

namespace Doughwright.Publishing.Pictures.Files.Styles;

/// <summary>How one element of a picture looks, worked out. Lengths in units of the picture.</summary>
internal sealed record Look
{
    public const string None = "none";

    /// <summary>"#rrggbb", "url(#id)" or "none".</summary>
    public string Fill { get; init; } = "#000000";

    public string Stroke { get; init; } = None;

    public double StrokeWidth { get; init; } = 1;

    public IReadOnlyList<double> Dashes { get; init; } = [];

    public bool IsRoundlyJoined { get; init; }

    public double Opacity { get; init; } = 1;

    /// <summary>Whether the outline of letters lies under them: the halo that keeps text off what is drawn.</summary>
    public bool StrokeFirst { get; init; }

    public string StopColour { get; init; } = "#000000";

    public double FontSize { get; init; } = 16;

    public double FontWeight { get; init; } = 400;

    public bool IsItalic { get; init; }

    public bool IsBook { get; init; }

    /// <summary>Whether all figures are equally wide.</summary>
    public bool IsTabular { get; init; }

    public FaceCut Face => (IsBook, IsItalic, FontWeight) switch
    {
        (true, true, _) => FaceCut.BookItalic,
        (true, _, _) => FaceCut.Book,
        (_, _, > 540) => FaceCut.LabelBold,
        _ => FaceCut.Label,
    };

    /// <summary>What an element within this one has before its own rules.</summary>
    public Look Inherited => this with { Opacity = 1, StopColour = "#000000" };

    public Look With(string name, string value) => name switch
    {
        "fill" => this with { Fill = value },
        "stroke" => this with { Stroke = value },
        "stroke-width" => this with { StrokeWidth = Number(value) },
        "stroke-dasharray" => this with { Dashes = value == None ? [] : [.. value.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(Number)] },
        "stroke-linejoin" => this with { IsRoundlyJoined = value == "round" },
        "opacity" => this with { Opacity = Number(value) },
        "paint-order" => this with { StrokeFirst = value.StartsWith("stroke", StringComparison.Ordinal) },
        "stop-color" => this with { StopColour = value },
        "font-size" => this with { FontSize = Number(value) },
        "font-weight" => this with { FontWeight = Number(value) },
        "font-style" => this with { IsItalic = value == "italic" },
        "font-variant-numeric" => this with { IsTabular = value.Contains("tabular", StringComparison.Ordinal) },
        "font" => WithFont(value),
        _ => this,
    };

    /// <summary>"italic 400 13.5px/1 family, ...".</summary>
    private Look WithFont(string value)
    {
        var words = value.Split(' ');
        var size = Array.FindIndex(words, word => word.Contains("px", StringComparison.Ordinal));
        return this with
        {
            IsItalic = words[..size].Contains("italic"),
            FontWeight = words[..size].FirstOrDefault(word => char.IsDigit(word[0])) is { } weight ? Number(weight) : 400,
            FontSize = Number(words[size].Split('/')[0]),
            IsTabular = false,
            IsBook = string.Join(' ', words[(size + 1)..]).StartsWith("\"Brygada", StringComparison.Ordinal),
        };
    }

    private static double Number(string value) => double.Parse(value.Replace("px", "", StringComparison.Ordinal), CultureInfo.InvariantCulture);
}

/// <summary>The cuts of the two faces that pictures are lettered in.</summary>
internal enum FaceCut
{
    Label,
    LabelBold,
    Book,
    BookItalic,
}
