using Doughwright.App.Desk.Files;
using Doughwright.App.Desk.Recipes.Telling;
using Doughwright.Publishing.Pictures.Drawing;

namespace Doughwright.App.Desk.Recipes.Views;

/// <summary>A section about one sort of figures: how warm the dough is, how it cools, how it rises, how it bakes.</summary>
/// <param name="Id">Unique on the page.</param>
public sealed record Section(string Id, string Title, IReadOnlyList<Matter> Matters)
{
    /// <summary>Whether it is about the oven.</summary>
    public bool IsBake { get; init; }
}

/// <summary>A figure with the picture that shows it and the reasons for it.</summary>
/// <param name="Name">Stands over it where a section has several; else empty.</param>
public sealed record Matter(string Id, string Name, Told Fact)
{
    /// <summary>Markup of the picture; null when there is none.</summary>
    public string? Picture { get; init; }

    /// <summary>Where the figure comes from, in a word or a few: "measured"; empty where the figure itself says so.</summary>
    public string Basis { get; init; } = "";

    public string Caption { get; init; } = "";

    /// <summary>How far the picture is, or what it changed about the figure; null where the picture is there with the page.</summary>
    public Told? State { get; init; }

    /// <summary>Where the picture is to be had as long as it is not there, for a browser without script; null where it is there.</summary>
    public SaveView? Meanwhile { get; init; }

    /// <summary>The picture as files.</summary>
    public IReadOnlyList<SaveView> Saves { get; init; } = [];

    /// <summary>Address of the page that makes another place for the dough; null where it waits for no warmth.</summary>
    public string? Elsewhere { get; init; }

    /// <summary>The picture in figures.</summary>
    public FigureTable? Table { get; init; }

    /// <summary>The question that opens the reasons; empty when there are none.</summary>
    public string Why { get; init; } = "";

    public WhyView? Reasons { get; init; }

    /// <summary>Whether the picture stands with the reasons instead of before them.</summary>
    public bool PictureInside { get; init; }

    public bool IsOpen { get; init; }
}
