using Doughwright.Engine.Recipes;
using Doughwright.Engine.TextForm;

namespace Doughwright.Engine.Editing;

/// <summary>Photos laid to a recipe or to a step, taken away, and said otherwise. A step of null means the whole recipe.</summary>
public static class PhotoEdits
{
    /// <summary>Lays a photo to a recipe or to a step of it.</summary>
    /// <param name="hash">Of the photo in the book: SHA-256, small hexadecimal digits.</param>
    /// <param name="typed">What is to be seen on it.</param>
    public static EditAnswer Lay(Recipe recipe, string? step, string hash, string typed) => With(recipe, step, photos =>
    {
        var words = TypedLine.Tidy(typed);
        var name = hash.Length > PhotoGrammar.Digits ? hash[..PhotoGrammar.Digits] : hash;
        return words.Length == 0 ? EditAnswer.Refuse("edit-photo-words", PlaceOf(step))
            : photos.Any(photo => photo.Name == name) ? EditAnswer.Refuse("edit-photo-there", PlaceOf(step))
            : new EditAnswer.Done(Showing(recipe, step, [.. photos, new(name, words, Position.None)]), Deed.Of("photo-laid", ("words", words)));
    });

    /// <summary>Says otherwise what is to be seen on a photo.</summary>
    public static EditAnswer Say(Recipe recipe, string? step, string name, string typed) => With(recipe, step, photos =>
    {
        var words = TypedLine.Tidy(typed);
        return words.Length == 0 ? EditAnswer.Refuse("edit-photo-words", PlaceOf(step))
            : photos.All(photo => photo.Name != name) ? EditAnswer.Refuse("edit-photo-gone", PlaceOf(step))
            : new EditAnswer.Done(
                Showing(recipe, step, [.. photos.Select(photo => photo.Name == name ? photo with { Words = words } : photo)]), Deed.Of("photo-said", ("words", words)));
    });

    /// <summary>Takes a photo away. It stays in the book.</summary>
    public static EditAnswer TakeOut(Recipe recipe, string? step, string name) => With(recipe, step, photos => photos.FirstOrDefault(photo => photo.Name == name) is { } found
        ? new EditAnswer.Done(Showing(recipe, step, [.. photos.Where(photo => photo.Name != name)]), Deed.Of("photo-taken-out", ("words", found.Words)))
        : EditAnswer.Refuse("edit-photo-gone", PlaceOf(step)));

    private static EditAnswer With(Recipe recipe, string? step, Func<IReadOnlyList<Photo>, EditAnswer> change) =>
        step is null ? change(recipe.Photos)
        : recipe.FindStep(step) is { } found ? change(found.Photos)
        : EditAnswer.Refuse("edit-step-gone", Places.OfStep(step), ("step", step));

    private static Recipe Showing(Recipe recipe, string? step, IReadOnlyList<Photo> photos) => step is null
        ? recipe with { Photos = photos }
        : recipe with { Steps = [.. recipe.Steps.Select(one => one.Id == step ? one with { Photos = photos } : one)] };

    private static string PlaceOf(string? step) => step is null ? PhotoGrammar.Key : $"{Places.OfStep(step)}.{PhotoGrammar.Key}";
}
