using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;

namespace Doughwright.Engine.Cases.Kinds;

/// <summary>A preferment with yeast, or a feeding of ripe sourdough, until it is ripe: rehearsed as one that nobody has timed.</summary>
internal sealed class RipeningKind : CaseKind
{
    private const string Preferment = "preferment";
    private const string Starter = "starter";
    private const string Start = "start";
    private const string Air = "air";
    private const string CoverKey = "cover";
    private const string VesselKey = "vessel";

    private static readonly CaseQuantity Time = new("time to ripe", null, Dimension.Time);
    private static readonly CaseQuantity ByTemperature = new("time to ripe by temperature", Dimension.DoughWarmth, Dimension.Time);

    public override string Name => "ripening";

    public override IReadOnlyList<string> Keys => [Preferment, Starter, Start, Air, CoverKey, VesselKey];

    public override IReadOnlyList<CaseQuantity> Quantities => [Time, ByTemperature];

    public override ICaseModel? Read(CaseConditions conditions)
    {
        var preferment = conditions.NeedLines(Preferment, ComponentKind.Preferment);
        var starter = conditions.MayLines(Starter, ComponentKind.Starter);
        var start = conditions.Need(Start, Dimension.DoughWarmth);
        var air = conditions.NeedAir(Air);
        var cover = conditions.MayBe<Cover>(CoverKey) ?? Cover.Covered;
        var vessel = conditions.MayVessel(VesselKey) ?? Vessel.None;
        return preferment is null || start is null || air is null || (starter is null && conditions.Has(Starter))
            ? null
            : new Ripening(preferment, starter, Temperature.FromCelsius(start.Value), air, cover, vessel);
    }

    private sealed record Ripening(Component Preferment, Component? Starter, Temperature Start, AirProfile Air, Cover Cover, Vessel Vessel) : ICaseModel
    {
        private const string Ripens = "ripen";

        public CaseAnswer Answer(CaseSeries series)
        {
            var answers = series.Points.Select(point => series.Of == Time ? Minutes() : At(Temperature.FromCelsius(point.Place)).Minutes()).ToArray();
            return answers.All(answer => answer is not null)
                ? CaseAnswer.Of(answers!)
                : CaseAnswer.Refused(CaseFaults.NotComputed, Grade.Warning, ("quantity", series.Quantity));
        }

        private Ripening At(Temperature everywhere) => this with { Start = everywhere, Air = AirProfile.Constant(everywhere) };

        private double[]? Minutes()
        {
            var fed = Starter is null ? Preferment : Preferment with
            {
                Lines = [.. Preferment.Lines, new Line { Id = Starter.Id, Name = Starter.Name, Uses = Starter.Id, Typed = "", Position = Position.None }],
            };
            var mixed = CaseRecipe.Step(CaseRecipe.Mix, StepKind.Mix, fed) with { End = new StepEnd.AfterTime(Limits.Step.Low), Measured = new(null, Start, null, 1), Vessel = Vessel.None };
            var ripens = CaseRecipe.Step(Ripens, StepKind.Rest, fed) with { End = new StepEnd.WhenRipe(null), Cover = Cover, Vessel = Vessel };
            var recipe = CaseRecipe.Of(fed, new() { Air = Air }, [mixed, ripens]);
            recipe = Starter is null ? recipe : recipe with { Components = [Starter, fed] };
            return Rehearser.Rehearse(recipe, Larder.Shipped).Kept.Find(Ripens)?.Minutes?.Values;
        }
    }
}
