using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Formulas;

/// <summary>Collects findings, so that a place is always written the same way.</summary>
internal sealed class Report
{
    private readonly List<Finding> findings = [];

    public IReadOnlyList<Finding> Findings => findings;

    public static string PlaceOf(string component, string line) => $"parts.{component}.{line}";

    public void Add(Finding finding) => findings.Add(finding);

    public void About(Component component, Line line, string kind, Grade grade, params (string Name, object Value)[] arguments) =>
        Add(Make(kind, grade, PlaceOf(component.Id, line.Id), line.Position, arguments));

    public void About(Component component, string kind, Grade grade, params (string Name, object Value)[] arguments) =>
        Add(Make(kind, grade, $"parts.{component.Id}", component.Position, arguments));

    public static Finding Make(string kind, Grade grade, string place, Position position, params (string, object)[] arguments) => new()
    {
        Kind = kind,
        Grade = grade,
        Place = place,
        Position = position,
        Arguments = arguments.ToDictionary(argument => argument.Item1, argument => argument.Item2),
    };
}
