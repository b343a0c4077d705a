using System.Security.Cryptography;
using System.Text;
using Doughwright.Engine.Recipes;

namespace Doughwright.Engine.TextForm;

/// <summary>The name of a state: what is the same recipe has the same name, whoever wrote it down and in which order of keys.</summary>
public static class StateId
{
    /// <summary>SHA-256 of the canonical text without comments, in small hexadecimal digits.</summary>
    public static string Of(Recipe recipe) => OfText(RecipeText.Write(recipe));

    /// <summary>SHA-256 of a text in UTF-8.</summary>
    public static string OfText(string text) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text)));
}
