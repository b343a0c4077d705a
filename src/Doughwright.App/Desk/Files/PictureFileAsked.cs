using Doughwright.App.Commands;
using Doughwright.App.Desk.Asking;
using Doughwright.App.Desk.Recipes.State;
using Doughwright.App.Desk.Shelf;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Rehearsals.Sections;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Desk.Files;

/// <summary>A picture that an address asks for, read by the code of "picture" and of "rehearse". A file says nothing beside itself, so what is refused is not left out.</summary>
internal sealed class PictureFileAsked
{
    private readonly RecipeFile file;
    private readonly Request request;
    private readonly Options options;
    private readonly Faults faults;
    private readonly PictureWish? wish;

    private PictureFileAsked(RecipeFile file, Understood read, PictureWish? wish, Options options, Faults faults)
    {
        (this.file, request, this.wish, this.options, this.faults) = (file, read.Request, wish, options, faults);
        Refused = Told(read.Refusals.Select(refusal => $"{refusal.Message} {refusal.WayOut}"));
    }

    /// <summary>Why there is no picture, in a line; empty as long as nothing is known to be wrong.</summary>
    public string Refused { get; private set; }

    public string ContentType => wish is { IsPng: true } ? "image/png" : "image/svg+xml; charset=utf-8";

    public string FileName => PictureAddress.FileName(file.Name, wish!.KindAsTyped, wish.Step, wish.IsPng);

    /// <summary>Null when there is no such recipe, or its text is not understood.</summary>
    public static PictureFileAsked? Of(string name, string query, ShelfFolder shelf, Words words)
    {
        if (RecipeFile.Read(name, shelf) is not { Recipe: { } recipe } file)
        {
            return null;
        }

        var question = Question.Of(query, PictureAddress.Own);
        var voice = new Voice(words, MeasureNames.Of(question.First(Question.Measures)));
        var read = new QuestionReader(recipe, name, shelf, words).Read(question, voice.Measures);
        var (options, faults) = (new Options(), new Faults(voice, FieldNames.Of(words)));
        string[] own = [.. Question.Of(query).Items.Where(item => PictureAddress.Own.Contains(item.Name)).Select(item => item.Argument)];
        var given = new Given(options.Parse([options.Picture.Name, "recipe", .. own]), faults);
        return new(file, read, PictureWish.Read(given, options, recipe, "picture.svg"), options, faults);
    }

    /// <summary>Null when there is none; then it is said why.</summary>
    public MadePicture? Made()
    {
        var made = wish is null ? null : Made(Rehearser.RehearseOverSections(file.Formula!, Larder.Shipped, request), wish);
        if (made is null && Refused.Length == 0 && !faults.Any)
        {
            var finding = MadePicture.NotKnown(wish!);
            Refused = $"{FindingWords.Message(finding, faults.Voice)} {FindingWords.WayOut(finding, faults.Voice)}";
        }

        Refused = made is null ? Told([Refused]) : Refused;
        return made;
    }

    private MadePicture? Made(RehearsedOverSections told, PictureWish asked) => MadePicture.Of(told.Rehearsal, told.Request, told.Bakes, asked, options, faults);

    private string Told(IEnumerable<string> others) =>
        string.Join(' ', others.Concat(faults.All.Select(fault => $"{fault.Message} {fault.WayOut}")).Where(said => said.Length > 0).Distinct());
}
