using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Sides;

/// <summary>What steps are compared by.</summary>
internal static class StepTraits
{
    public static IReadOnlyList<Trait<Step>> All { get; } =
    [
        new(Aspect.StepName, step => step.Name, (from, into) => into with { Name = from.Name }),
        new(Aspect.StepKind, step => step.Kind, (from, into) => into with { Kind = from.Kind }),
        new(Aspect.StepPart, step => step.Component, (from, into) => into with { Component = from.Component }),
        new(Aspect.Hands, step => step.Hands, (from, into) => into with { Hands = from.Hands }),
        new(Aspect.End, step => step.End, (from, into) => into with { End = from.End }),
        new(Aspect.Cue, step => step.Cue, (from, into) => into with { Cue = from.Cue }),
        new(Aspect.Measured, step => step.Measured, (from, into) => into with { Measured = from.Measured }),
        new(Aspect.Vessel, step => step.Vessel, (from, into) => into with { Vessel = from.Vessel }),
        new(Aspect.Cover, step => step.Cover, (from, into) => into with { Cover = from.Cover }),
        new(Aspect.Depth, step => step.Depth, (from, into) => into with { Depth = from.Depth }),
        new(Aspect.Where, step => step.Where, (from, into) => into with { Where = from.Where }),
        new(Aspect.Way, step => step.Way, (from, into) => into with { Way = from.Way }),
        new(Aspect.Order, step => step.Order, (from, into) => into with { Order = from.Order }),
        new(Aspect.Folds, step => step.Folds, (from, into) => into with { Folds = from.Folds }),
        // A dial that is not there takes what is said of it along.
        new(Aspect.Dial, step => step.Oven?.Dial, (from, into) => into with { Oven = from.Oven is { } oven ? (into.Oven ?? oven) with { Dial = oven.Dial } : null }),
        new(Aspect.OvenMode, step => step.Oven?.Mode, (from, into) => into with { Oven = into.Oven is { } oven ? oven with { Mode = from.Oven?.Mode } : from.Oven }),
        new(Aspect.DialThen, step => step.Oven?.Then, (from, into) => into with { Oven = into.Oven is { } oven ? oven with { Then = from.Oven?.Then } : from.Oven }),
        new(Aspect.Trays, step => step.Trays, (from, into) => into with { Trays = from.Trays }),
        new(Aspect.Steam, step => step.Steam, (from, into) => into with { Steam = from.Steam }),
        new(Aspect.On, step => step.On, (from, into) => into with { On = from.On }),
        new(Aspect.LidOff, step => step.LidOff, (from, into) => into with { LidOff = from.LidOff }),
        new(Aspect.StepTools, step => step.Tools, (from, into) => into with { Tools = from.Tools }),
        new(Aspect.Variants, OtherWay.Of, (from, into) => into with { Variants = [.. from.Variants.Select(variant => OtherWay.Over(from, variant, into))] }),
        new(Aspect.StepWords, step => step.Words, (from, into) => into with { Words = from.Words }),
        new(Aspect.Learn, step => step.Learn, (from, into) => into with { Learn = from.Learn }),
    ];

    /// <summary>One property taken over; the other ways of the step that go with it still do.</summary>
    public static Step Take(Trait<Step> trait, Step from, Step into) => trait.Aspect == Aspect.Variants
        ? trait.Take(from, into)
        : trait.Take(from, into) with
        {
            Variants =
            [
                .. into.Variants.Select(variant => trait.Between(into, variant.Step) is null ? variant with { Step = trait.Take(from, variant.Step) } : variant),
            ],
        };
}
