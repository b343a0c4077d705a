using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.Editing;

/// <summary>What comes of a change that an author wants.</summary>
public abstract record EditAnswer
{
    private EditAnswer()
    {
    }

    /// <summary>It can be made.</summary>
    /// <param name="Recipe">With the change in it.</param>
    public sealed record Done(Recipe Recipe, Deed Deed) : EditAnswer;

    /// <summary>It cannot be made. All reasons, at least one.</summary>
    public sealed record Refused(IReadOnlyList<Finding> Reasons) : EditAnswer;

    internal static EditAnswer Refuse(string kind, string place, params (string Name, object Value)[] arguments) => new Refused(
    [
        new()
        {
            Kind = kind,
            Grade = Grade.Error,
            Place = place,
            Arguments = arguments.ToDictionary(argument => argument.Name, argument => argument.Value),
        },
    ]);
}
