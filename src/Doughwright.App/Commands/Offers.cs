using System.Globalization;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Remedies;

namespace Doughwright.App.Commands;

/// <summary>The ways out that can be carried out, numbered through the whole list of findings.</summary>
internal sealed class Offers
{
    private readonly ILookup<string, (int Number, Remedy Remedy)> byFinding;

    private Offers(IReadOnlyList<Remedy> all)
    {
        All = all;
        byFinding = all.Select((remedy, index) => (Number: index + 1, Remedy: remedy)).ToLookup(offer => offer.Remedy.FindingId);
    }

    /// <summary>For a text that is not to be written.</summary>
    public static Offers None { get; } = new([]);

    public IReadOnlyList<Remedy> All { get; }

    /// <param name="recipe">Null when a line was not understood.</param>
    public static Offers Of(IReadOnlyList<Finding> findings, Recipe? recipe) =>
        new([.. findings.SelectMany(finding => Remedies.For(finding, recipe)).DistinctBy(remedy => remedy.Id)]);

    public IEnumerable<(int Number, Remedy Remedy)> For(Finding finding) => byFinding[finding.Id];

    /// <summary>By its number in the list, or by its id.</summary>
    public Remedy? Find(string given) =>
        int.TryParse(given, NumberStyles.None, CultureInfo.InvariantCulture, out var number)
            ? All.ElementAtOrDefault(number - 1)
            : All.FirstOrDefault(remedy => remedy.Id == given);
}
