using Doughwright.App.Commands;
using Doughwright.App.Desk.Recipes.State;
using Doughwright.Engine.Formulas.Swaps;
using Doughwright.Publishing.Wording;
using Microsoft.AspNetCore.WebUtilities;

namespace Doughwright.App.Desk.Swaps;

/// <summary>
/// What an address asks of a swap: "replace=butter=olive oil", as often as there are things to swap, read by the code of the command line. A form sends
/// the controls of its sentences instead, which come to the same.
/// </summary>
/// <param name="Slots">One for each sentence; the last may be empty, for another swap.</param>
/// <param name="Refused">Numbers of the sentences that cannot be understood.</param>
/// <param name="Wishes">None when nothing is asked yet, or something asked is refused.</param>
internal sealed record SwapAsk(IReadOnlyList<SwapSlot> Slots, IReadOnlySet<int> Refused, IReadOnlyList<Wish> Wishes, IReadOnlyList<Fault> Faults)
{
    public const string ReplaceName = "replace";
    public const string WhatName = "what";
    public const string ByName = "by";
    public const string PartName = "part";

    /// <summary>Set by the button that wants one more sentence.</summary>
    public const string AnotherName = "another";

    /// <summary>More than anybody lacks at once.</summary>
    private const int Most = 12;

    /// <summary>The address that a sent form means; null for an address that no form made.</summary>
    public static string? OfForm(string path, string query)
    {
        var sent = QueryHelpers.ParseQuery(query);
        if (!sent.TryGetValue(WhatName, out var whats))
        {
            return null;
        }

        var (bys, parts) = (sent.GetValueOrDefault(ByName), sent.GetValueOrDefault(PartName));
        var address = path;
        for (var i = 0; i < whats.Count; i++)
        {
            if (whats[i] is { Length: > 0 } what)
            {
                var part = i < parts.Count && parts[i] is { Length: > 0 } named ? "@" + named : "";
                address = QueryHelpers.AddQueryString(address, ReplaceName, $"{what}{part}={(i < bys.Count ? bys[i]?.Trim() : "")}");
            }
        }

        string[] kept = [AnotherName, "measures"];
        return kept.Where(sent.ContainsKey).Aggregate(address, (whole, name) => QueryHelpers.AddQueryString(whole, name, sent[name].ToString()));
    }

    /// <param name="file">With a recipe.</param>
    public static SwapAsk Of(string query, RecipeFile file, Voice voice)
    {
        var asked = QueryHelpers.ParseQuery(query);
        string[] typed = asked.TryGetValue(ReplaceName, out var all) ? [.. all.OfType<string>()] : [];
        var options = new Options();
        var faults = FaultsOf(voice, options);
        if (typed.Length > Most)
        {
            faults.Add("swaps-too-many", ("most", Most));
            typed = typed[..Most];
        }

        var wishes = Read(typed, options, file, faults);
        var slots = typed.Select(each => SwapSlot.Of(SwapOptions.Wish(each) ?? new(each, ""), file.Recipe!, voice)).ToList();
        if (slots.Count == 0 || asked.ContainsKey(AnotherName))
        {
            slots.Add(SwapSlot.Of(new("", ""), file.Recipe!, voice));
        }

        var refused = Enumerable.Range(0, typed.Length).Where(i => faults.Any && IsFaulty(typed[i], options, file, voice)).ToHashSet();
        return new(slots, refused, faults.Any ? [] : wishes, faults.All);
    }

    private static IReadOnlyList<Wish> Read(string[] typed, Options options, RecipeFile file, Faults faults) => SwapOptions.Read(
        new(options.Parse([options.Swap.Name, "recipe", .. typed.Select(each => $"{options.Replace.Name}={each}")]), faults), options, file.Recipe!);

    private static bool IsFaulty(string typed, Options options, RecipeFile file, Voice voice)
    {
        var faults = FaultsOf(voice, options);
        Read([typed], options, file, faults);
        return faults.Any;
    }

    /// <summary>Nobody types options here.</summary>
    public static Faults FaultsOf(Voice voice, Options options) => new(voice, option => option == options.Replace.Name ? voice.Words["swaps.field"] : option);

    /// <summary>The query without one of its swaps.</summary>
    public static string Without(string path, string query, int index)
    {
        var asked = QueryHelpers.ParseQuery(query);
        var kept = asked.GetValueOrDefault(ReplaceName).Where((_, i) => i != index)
            .Select(each => KeyValuePair.Create(ReplaceName, each))
            .Concat(asked.Where(pair => pair.Key == "measures").Select(pair => KeyValuePair.Create(pair.Key, (string?)pair.Value.ToString())));
        return QueryHelpers.AddQueryString(path, kept);
    }
}
