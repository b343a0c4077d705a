using Doughwright.App.Commands;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Recipes;
using Doughwright.Publishing.Wording;
using Microsoft.AspNetCore.Http;

namespace Doughwright.App.Desk.Fields;

/// <summary>
/// A text as a form: each field is a key of it, what is typed is read by the reader of the text, and what that finds stands beside the field it is about.
/// </summary>
/// <param name="plan">Which fields there are, in which groups.</param>
internal sealed class PaperForm(FormPlan plan, Voice voice)
{
    /// <summary>Letters of a field of one line.</summary>
    public const int Longest = 200;

    /// <summary>Letters of a field of several lines.</summary>
    public const int LongestOfLines = 4000;

    private readonly Dictionary<string, string> typed = new(StringComparer.Ordinal);
    private readonly Dictionary<string, List<string>> reasons = new(StringComparer.Ordinal);

    /// <summary>What is wrong and belongs to no field.</summary>
    public IReadOnlyList<Fault> Elsewhere { get; private set; } = [];

    /// <summary>What stands behind a key, with its unit.</summary>
    public string this[string key] => typed.GetValueOrDefault(key, "");

    public IReadOnlyList<FieldsView> Groups => [.. plan.Groups.Select(group => new FieldsView(
        $"{plan.Words}-{group.Name}",
        voice.Words[$"field.{plan.Words}.{group.Name}"],
        voice.Words.Entries.ContainsKey($"field.{plan.Words}.{group.Name}.note") ? voice.Words[$"field.{plan.Words}.{group.Name}.note"] : "",
        [.. group.Keys.Where(key => !plan.Rare.Contains(key) || this[key].Length > 0).Select(FieldOf)]))];

    /// <summary>Fills the fields with what a text says.</summary>
    public void Fill(IReadOnlyDictionary<string, string> said)
    {
        foreach (var key in plan.Keys)
        {
            typed[key] = said.GetValueOrDefault(key, "");
        }
    }

    /// <summary>Fills the fields with what was sent; a bare number gets the unit of its field.</summary>
    public void Take(IFormCollection form)
    {
        foreach (var key in plan.Keys)
        {
            typed[key] = plan.Complete(key, form[Slug.Of(key)].ToString().Trim(), voice.Measures);
        }
    }

    /// <summary>What the form says, key by key, in the order of the text.</summary>
    public IEnumerable<(string Key, string Typed)> Said => plan.Order.Select(key => (key, this[key]));

    /// <summary>Puts what is wrong beside the field that it is about.</summary>
    /// <returns>Whether anything is.</returns>
    public bool Tell(IEnumerable<Finding> findings)
    {
        var faults = new Faults(voice);
        foreach (var finding in findings.Where(finding => finding.Grade == Grade.Error))
        {
            if (plan.KeyOf(finding) is { } key)
            {
                Refuse(key, $"{FindingWords.Message(finding, voice)} {FindingWords.WayOut(finding, voice)}".Trim());
            }
            else
            {
                faults.Add(finding);
            }
        }

        Elsewhere = [.. Elsewhere, .. faults.All];
        return reasons.Count > 0 || Elsewhere.Count > 0;
    }

    /// <summary>Says of a field why what stands in it is not taken.</summary>
    public void Refuse(string key, string reason)
    {
        reasons.TryAdd(key, []);
        if (!reasons[key].Contains(reason))
        {
            reasons[key].Add(reason);
        }
    }

    /// <summary>Says what could not be done, and belongs to no field.</summary>
    public void Refuse(Faults faults) => Elsewhere = [.. Elsewhere, .. faults.All];

    /// <summary>Says what another window wrote meanwhile, by name each field that says something else here.</summary>
    /// <param name="name">What the paper is called.</param>
    /// <param name="other">What the paper says now, key by key.</param>
    public void TellOther(string name, IReadOnlyDictionary<string, string> other)
    {
        var faults = new Faults(voice);
        string[] otherwise = [.. plan.Keys.Where(key => OneForm(other.GetValueOrDefault(key, "")) != OneForm(this[key]))];
        faults.Add(otherwise.Length == 0 ? "paper-other-same" : "paper-other", ("name", name));
        foreach (var key in otherwise)
        {
            faults.Add(
                "paper-other-field",
                ("field", voice.Words[$"field.{plan.Words}.{Slug.Of(key)}"]), ("there", Spoken(other.GetValueOrDefault(key, ""))), ("here", Spoken(this[key])));
        }

        Refuse(faults);
    }

    private string Spoken(string said) => OneForm(said) is { Length: > 0 } words ? words.Replace("\n", " / ", StringComparison.Ordinal) : voice.Words["field.unsaid"];

    /// <summary>A browser sends two signs for each new line.</summary>
    private static string OneForm(string said) => said.ReplaceLineEndings("\n").Trim();

    private FieldView FieldOf(string key)
    {
        var id = Slug.Of(key);
        var hint = $"field.{plan.Words}.{id}.hint";
        return new(
            id,
            voice.Words[$"field.{plan.Words}.{id}"],
            voice.Words.Entries.ContainsKey(hint) ? voice.Words[hint] : "",
            plan.Bare(key, this[key], voice.Measures),
            plan.ShownUnitOf(key, voice.Measures),
            plan.Choices(key) is { } choices ? [("", voice.Words["field.unsaid"]), .. choices.Select(choice => (choice, voice.Words[$"field.{plan.Words}.{id}.{Slug.Of(choice)}"]))] : [],
            plan.Long.Contains(key),
            reasons.GetValueOrDefault(key, []));
    }
}
