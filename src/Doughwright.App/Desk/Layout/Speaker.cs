using Doughwright.App.Commands;
using Doughwright.App.Desk.Asking;
using Doughwright.App.Desk.Shelf;
using Doughwright.Engine.Quantities;
using Doughwright.Publishing.Wording;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Diagnostics;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.WebUtilities;

namespace Doughwright.App.Desk.Layout;

/// <summary>The voice of a page: the words of the desk, in the measures that the address asks for.</summary>
internal sealed class Speaker(Words words, NavigationManager navigation, IHttpContextAccessor contexts)
{
    /// <summary>Language of the words.</summary>
    public string Language => words["language"];

    public Voice Voice => new(words, Measures);

    public MeasureSystem Measures => MeasureNames.Of(Asked);

    /// <summary>Why the measures that the address asks for are not used; null when they are, or when it asks for none.</summary>
    public Fault? MeasuresRefused
    {
        get
        {
            if (Asked is not { } asked || MeasureNames.All.ContainsKey(asked))
            {
                return null;
            }

            var faults = new Faults(Voice);
            faults.AddUnknown("word-unknown", asked, [.. MeasureNames.All.Keys], ("option", "--" + Question.Measures));
            return faults.All[0];
        }
    }

    /// <summary>Class of tables whose weights carry their own units and so need room.</summary>
    public string MeasuresClass => Measures == MeasureSystem.Us ? "ownunits" : "";

    public IReadOnlyList<MeasureChoice> MeasureChoices =>
    [
        new(words["desk.metric"], "", WithMeasures(null), Current(MeasureSystem.Metric)),
        new(words["desk.us"], MeasureNames.InAddress(MeasureSystem.Us)!, WithMeasures(MeasureNames.InAddress(MeasureSystem.Us)), Current(MeasureSystem.Us)),
    ];

    /// <summary>"page" when this is the page shown, for aria-current.</summary>
    /// <param name="pages">Where the pages behind it begin.</param>
    public string? CurrentIf(string path, params ReadOnlySpan<string> pages)
    {
        var at = new Uri(navigation.Uri).AbsolutePath;
        foreach (var page in pages)
        {
            if (at != path && at.StartsWith(page, StringComparison.Ordinal))
            {
                return "true";
            }
        }

        return at == path ? "page" : null;
    }

    /// <summary>Another page of the desk, in the measures of this one.</summary>
    public string To(string address) => ShelfAddress.InMeasures(address, Voice);

    /// <summary>Address of the content of this page: a bare mark would lead from every page to the first one, which is the base of all addresses.</summary>
    public string Content => Here + "#main";

    /// <summary>A title for the window.</summary>
    public string TitleOf(string key) => Titled(words[key]);

    public string Titled(string title) => Voice.Say("desk.title", ("page", title));

    /// <summary>The address that was asked for: what lies nowhere is answered by a page with another one.</summary>
    private string Here => contexts.HttpContext?.Features.Get<IStatusCodeReExecuteFeature>() is { } asked
        ? navigation.BaseUri.TrimEnd('/') + asked.OriginalPath + asked.OriginalQueryString
        : navigation.Uri;

    private string WithMeasures(string? measures) => navigation.GetUriWithQueryParameters(Here, new Dictionary<string, object?> { [Question.Measures] = measures });

    private string? Asked => QueryHelpers.ParseQuery(new Uri(Here).Query).TryGetValue(Question.Measures, out var asked) && asked.Count > 0 ? asked[0] : null;

    private string? Current(MeasureSystem system) => Measures == system ? "true" : null;

    /// <summary>A link that changes the measures.</summary>
    /// <param name="Value">What it puts into the address; empty for none.</param>
    internal sealed record MeasureChoice(string Name, string Value, string Address, string? Current);
}
