using Doughwright.Engine.Editing;
using Doughwright.Engine.Recipes;
using Doughwright.Publishing.Pictures.Drawing;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Drafting.Views;

/// <summary>Another way to do a step.</summary>
/// <param name="Place">By which it is opened.</param>
/// <param name="Says">What it says for itself, in a line.</param>
/// <param name="Fields">What can be said otherwise; nothing while it is closed.</param>
public sealed record VariantView(string Step, string Id, string Place, string Name, string Says, IReadOnlyList<StepField> Fields)
{
    private static readonly string[] OfTheStep = ["kind", "of"];

    internal static IReadOnlyList<VariantView> All(Recipe recipe, Step step, IReadOnlyDictionary<string, string> ofStep, Func<string, bool> isOpen, Voice voice) =>
    [
        .. step.Variants.Select(variant =>
        {
            var said = VariantEdits.Said(recipe, step, variant.Id);
            var place = $"steps.{step.Id}.variants.{variant.Id}";
            return new VariantView(
                step.Id,
                variant.Id,
                place,
                variant.Step.Name,
                Capital.Of(string.Join("; ", said.Where(one => one.Key != "name").Select(one => voice.Say(
                    "variant.says", ("what", Capital.Small(voice.Words["write.step." + one.Key])), ("value", ChoiceWords.Of(one.Key, one.Value, voice)))))),
                isOpen(place) ? FieldsOf(recipe, step, variant, said, ofStep, voice) : []);
        }),
    ];

    private static IReadOnlyList<StepField> FieldsOf(
        Recipe recipe, Step step, StepVariant variant, IReadOnlyDictionary<string, string> said, IReadOnlyDictionary<string, string> ofStep, Voice voice) =>
    [
        .. StepField.All(recipe, step with { Variants = [] }, new Dictionary<string, string>([.. ofStep, .. said.Where(one => !ofStep.ContainsKey(one.Key))]), voice)
            .Where(field => !OfTheStep.Contains(field.Key))
            .Select(field => field with
            {
                Value = said.GetValueOrDefault(field.Key, field.Key == "name" ? variant.Step.Name : ""),
                Hint = ofStep.TryGetValue(field.Key, out var usual) ? voice.Say("variant.as-step", ("value", usual)) : field.Hint,
                Choices = field.Choices.Count == 0 ? [] : [("", voice.Words["variant.as-the-step"]), .. field.Choices.Where(choice => choice.Value.Length > 0)],
            }),
        .. new[] { "cue", "words" }.Select(key => new StepField(
            key, voice.Words["write.step." + key], said.GetValueOrDefault(key, ""), ofStep.TryGetValue(key, out var usual) ? voice.Say("variant.as-step", ("value", usual)) : "", [])),
    ];
}
