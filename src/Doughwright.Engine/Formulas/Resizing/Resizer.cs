using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.Quantities;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas.Resizing;

/// <summary>Brings the quantities of a recipe to another size. What was measured in the old size is looked at afterwards, by who can rehearse.</summary>
internal static class Resizer
{
    public static Resized Resize(Recipe recipe, Larder larder, ResizeRequest request)
    {
        var before = Formula.Balance(recipe, larder);
        var kitchen = request.Kitchen ?? recipe.Home;
        var asked = SizeAsked.Of(before, request.Wish);
        var refused = new[] { asked.Refused, ResizeChecks.Beyond(before, asked.Factor) }.OfType<Finding>().ToList();
        var taken = new TakenPieces(request.Take);
        refused.AddRange(refused.Count > 0 ? [] : taken.Refused(before, asked.Factor));
        if (refused.Count > 0)
        {
            return new() { Request = request, Before = before, Recipe = null, After = null, Factor = null, Scale = kitchen.Scale, Findings = refused };
        }

        var lines = Lines(before, asked.Factor, taken, kitchen.Scale);
        var scaled = lines.ToDictionary(line => (line.Component.Id, line.Source.Id), line => line.Line);
        var makes = asked.Makes.Select(make => make with { PieceMass = PieceText.Rounded(make.PieceMass, kitchen.Scale, recipe.Make!.PieceMass) }).ToList();
        var sized = recipe with
        {
            Make = makes.Count > 0 ? makes[0] : recipe.Make,
            Components = [.. recipe.Components.Select(component => component with
            {
                Lines = [.. component.Lines.Select(line => scaled.GetValueOrDefault((component.Id, line.Id), line))],
            })],
            Steps = [.. recipe.Steps.Select(step => WithNewVessel(step, request.Wish))],
        };
        var after = Formula.Balance(sized, larder);
        var fits = FitCheck.Of(before, after, asked.Factor, kitchen, request.Wish).ToList();
        var result = FitCheck.WithTrays(sized, fits);
        after = ReferenceEquals(result, sized) ? after : Formula.Balance(result, larder);
        var resized = new Resized
        {
            Request = request,
            Before = before,
            Recipe = result,
            After = after,
            Factor = asked.Factor,
            Scale = kitchen.Scale,
            Lines = [.. lines.Select(line => line.Result)],
            Makes = makes,
            Choices = [.. WholeThings.Choices(before, after, asked.Factor, taken, larder)],
            Fits = fits,
        };
        return resized with { Findings = [.. ResizeChecks.Of(resized)] };
    }

    private static List<ScaledLine> Lines(Formula before, double factor, TakenPieces taken, Mass scale)
    {
        var lines = new List<ScaledLine>();
        var seen = new HashSet<(string, string)>();
        foreach (var component in before.Components)
        {
            var source = before.Recipe.FindComponent(component.Id)!;
            foreach (var line in component.Lines.Where(line => line.Source.Mass is not null))
            {
                // An id that stands twice in a part is told where the text is read; the first one is scaled.
                if (!seen.Add((component.Id, line.Id)))
                {
                    continue;
                }

                var scaled = new ScaledLine(source, line.Source, factor, source.BelongsToDough);
                if (taken.Of(component.Id, line.Id) is { } count && WholeThings.PieceOf(line) is { } piece)
                {
                    Take(scaled, count, piece);
                }
                else if (factor == 1)
                {
                    scaled.Write(line.Source.Typed, LineForm.Scale, line.Source.Household, line.Mass);
                }

                lines.Add(scaled);
            }
        }

        new LineRounding(scale).Round(lines);
        return lines;
    }

    private static void Take(ScaledLine line, int count, Mass piece)
    {
        var mass = piece * count;
        if (line.Source.Household is { } household && Measures.Renumbered(line.Source.Typed, count) is { } typed)
        {
            line.Write(typed, LineForm.Pieces, household with { Amount = count }, mass);
        }
        else
        {
            line.Write(NumberText.Exact(mass.Grams) + " g", LineForm.Pieces, null, mass);
        }
    }

    /// <summary>In another tin or on another tray, whose weight nobody has said.</summary>
    private static Step WithNewVessel(Step step, ResizeWish wish) => step with
    {
        Vessel = (step.Vessel?.Shape, wish) switch
        {
            (VesselShape.Tin, ResizeWish.Tin(var size, _)) => step.Vessel! with { Size = size, Mass = null },
            (VesselShape.Tray, ResizeWish.Tray(var size, _)) when step.Kind is StepKind.Proof or StepKind.Bake => step.Vessel! with { Size = size, Mass = null },
            _ => step.Vessel,
        },
        Variants = [.. step.Variants.Select(variant => variant with { Step = WithNewVessel(variant.Step, wish) })],
    };
}
