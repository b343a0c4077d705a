using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Publishing.Pages.Measures;
using Doughwright.Publishing.Pictures.Drawing;

namespace Doughwright.Publishing.Pages.Method;

/// <summary>What the recipe and its rehearsal know of a step beside its times, in short sentences.</summary>
internal sealed class StepFacts(Rehearsal here, Both both)
{
    /// <param name="written">The author's step; null for one that was put in.</param>
    /// <param name="told">Whether the author tells in words what to do. Then what such words usually hold is not said again.</param>
    public IEnumerable<string> Of(RehearsedStep step, Step? written, bool told) => step.Kind switch
    {
        StepKind.Mix => [Order(written), Mixed(step), told ? "" : Tools(written)],
        StepKind.Scald when step.IsCooked => [told ? "" : Place(written), Ready(step), told ? "" : Tools(written)],
        StepKind.Cool or StepKind.Scald or StepKind.Warm => [told ? "" : Cover(written), Ready(step), told ? "" : Tools(written)],
        StepKind.Shape => [Pieces(step), told ? "" : Tools(written)],
        StepKind.Preheat => [Dial("page.dial", step)],
        StepKind.Bake => [Dial("page.dial-bake", step), Later(step), .. InOven(step), Trays(written), Core(step), told ? "" : Tools(written)],
        _ => told ? [] : [Place(written), Cover(written), Tools(written)],
    };

    private string Order(Step? written) => written is not { Order.Count: > 1 } || here.Formula.FindComponent(written.Component) is not { } part
        ? ""
        : both.Say("page.order", ("lines", written.Order.Select(id => Capital.Small(part.Lines.FirstOrDefault(line => line.Id == id) is { } line ? NameOf(line.Name, line.UsesComponent) : id))));

    private string NameOf(string name, string? part) => part is not null && here.Formula.FindComponent(part) is { } used ? used.Name : name;

    private string Mixed(RehearsedStep step) =>
        here.Components.FirstOrDefault(component => component.Id == step.Component)?.Mixed is { } mixed
        && here.Steps.Last(other => other.Component == step.Component && other.Kind == StepKind.Mix).Id == step.Id
            ? IsOfDough(step)
                ? both.Say("page.mixed", ("temperature", both.Degrees(mixed.Likely)))
                : both.Say("page.mixed-part", ("part", Capital.Of(NameOf(step.Component, step.Component))), ("temperature", both.Degrees(mixed.Likely)))
            : "";

    private bool IsOfDough(RehearsedStep step) => here.Formula.FindComponent(step.Component) is null or { Kind: ComponentKind.Dough };

    private string Ready(RehearsedStep step) => step is { EndTemperature: { } end, SettlesAt: null }
        ? both.Say(step.Cooling?.Invoke() is { Until: not CooledTo.AsWritten } ? "page.loaf-cooled" : "page.ready-at", ("temperature", both.Degrees(end)))
        : "";

    /// <summary>The last time the dough is shaped, it lies there in its pieces.</summary>
    private string Pieces(RehearsedStep step) =>
        here.Recipe.Make is { } make && here.Steps.LastOrDefault(other => other.Kind == StepKind.Shape && other.Component == step.Component)?.Id == step.Id
            ? both.Say(make.Pieces == 1 ? "page.piece" : "page.pieces", ("pieces", make.Pieces), ("what", make.What), ("piece", both.Weight(make.PieceMass)))
            : "";

    private string Dial(string key, RehearsedStep step) => step.Dial is { } dial ? both.Say(key, ("dial", both.Dial(dial))) : "";

    private string Later(RehearsedStep step) => step.Dial?.Then is { } then ? both.Say("page.dial-then", ("after", then.After), ("dial", both.Dial(then.Dial))) : "";

    private IEnumerable<string> InOven(RehearsedStep step)
    {
        yield return step.On switch { BakedOn.Stone => both.Say("page.bake-on-stone"), BakedOn.Rack => both.Say("page.bake-on-rack"), _ => "" };
        yield return step.Steam is { } steam ? both.Say("page.bake-steam", ("time", steam)) : "";
        yield return step.LidOff is { } off ? both.Say("page.bake-lid-off", ("time", off)) : "";
    }

    private string Trays(Step? written) => written?.Trays is > 1 and { } trays ? both.Say("page.trays", ("trays", trays)) : "";

    /// <summary>When it is done. A small piece that nobody measured comes to more by the time its crust is right; no reader needs that.</summary>
    private string Core(RehearsedStep step) => (step.Bake?.Invoke()?.DoneCore ?? step.EndTemperature) is { } core ? both.Say("page.core", ("temperature", both.Degrees(core))) : "";

    private string Place(Step? written) => written?.Where switch
    {
        Where.Fridge => both.Say("page.in-fridge"),
        Where.ProofingPlace => both.Say("page.in-proofing-place"),
        Where.Bath => both.Say("page.in-bath"),
        Where.Hob => both.Say("page.on-hob"),
        Where.Oven => both.Say("page.in-oven"),
        _ => "",
    };

    private string Cover(Step? written) => written?.Cover switch
    {
        Engine.Recipes.Cover.Covered => both.Say("page.covered"),
        Engine.Recipes.Cover.Cloth => both.Say("page.under-cloth"),
        _ => "",
    };

    private string Tools(Step? written) => written is { Tools.Count: > 0 } ? both.Say("page.with-tools", ("tools", written.Tools)) : "";
}
