namespace Doughwright.Engine.Ingredients;

/// <summary>Roles by the words of an author: "counts as flour".</summary>
internal static class RoleName
{
    /// <summary>Null when no role has this name.</summary>
    public static Role? Find(string said) =>
        Enum.GetNames<Role>().FirstOrDefault(name => name.Equals(said.Trim(), StringComparison.OrdinalIgnoreCase)) is { } named ? Enum.Parse<Role>(named) : null;
}
