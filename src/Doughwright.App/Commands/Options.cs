using System.CommandLine;

namespace Doughwright.App.Commands;

/// <summary>
/// The commands and their options. All values are read as plain words here and understood later, so that everything wrong with a command line can be
/// said at once and in our own words.
/// </summary>
internal sealed class Options
{
    public Option<bool> Json { get; } = new("--json") { Recursive = true };

    public Option<bool> Help { get; } = new("--help", "-h", "-?") { Recursive = true };

    public Option<bool> Version { get; } = new("--version");

    public Option<string[]> Measures { get; } = Value("--measures", recursive: true);

    /// <summary>Port of the desk.</summary>
    public Option<string[]> Port { get; } = Value("--port");

    /// <summary>Folder of the author's book.</summary>
    public Option<string[]> Folder { get; } = Value("--folder");

    public Option<bool> NoBrowser { get; } = new("--no-browser");

    public Argument<string[]> File { get; } = new("FILE") { Arity = ArgumentArity.ZeroOrMore };

    public Option<string[]> Kitchen { get; } = Value("--kitchen");

    public Option<string[]> Air { get; } = Value("--air");

    public Option<string[]> Start { get; } = Value("--start");

    public Option<string[]> Ingredients { get; } = Value("--ingredients");

    public Option<string[]> Altitude { get; } = Value("--altitude");

    public Option<string[]> Oven { get; } = Value("--oven");

    public Option<string[]> Tap { get; } = Value("--tap");

    public Option<string[]> Fridge { get; } = Value("--fridge");

    public Option<string[]> Proof { get; } = Value("--proof");

    public Option<string[]> At { get; } = Value("--at");

    public Option<string[]> Pour { get; } = Value("--pour");

    public Option<string[]> Bowl { get; } = Value("--bowl");

    public Option<string[]> Variant { get; } = Value("--variant");

    public Option<string[]> Weighed { get; } = Value("--weighed");

    public Option<string[]> Dough { get; } = Value("--dough");

    public Option<string[]> Free { get; } = Value("--free");

    public Option<string[]> Why { get; } = Value("--why");

    /// <summary>What moved each figure.</summary>
    public Option<bool> Because { get; } = new("--because");

    /// <summary>Which picture.</summary>
    public Option<string[]> PictureOf { get; } = Value("--of");

    public Option<string[]> As { get; } = Value("--as");

    public Option<string[]> Width { get; } = Value("--width");

    public Option<string[]> Ground { get; } = Value("--ground");

    /// <summary>A way out of a finding to be carried out.</summary>
    public Option<string[]> Do { get; } = Value("--do");

    /// <summary>A finding to be accepted, with the reason.</summary>
    public Option<string[]> Accept { get; } = Value("--accept");

    public Option<string[]> Pieces { get; } = Value("--pieces");

    public Option<string[]> Piece { get; } = Value("--piece");

    /// <summary>So much dough: another thing than the temperature asked of a rehearsal, under the same name.</summary>
    public Option<string[]> DoughMass { get; } = Value("--dough");

    public Option<string[]> Have { get; } = Value("--have");

    public Option<string[]> Tin { get; } = Value("--tin");

    public Option<string[]> Tray { get; } = Value("--tray");

    public Option<string[]> Trays { get; } = Value("--trays");

    public Option<string[]> Take { get; } = Value("--take");

    public Option<string[]> Replace { get; } = Value("--replace");

    /// <summary>Folder that a page is written to; file of a picture.</summary>
    public Option<string[]> Out { get; } = Value("--out");

    /// <summary>Where the words were written.</summary>
    public Option<string[]> Region { get; } = Value("--region");

    /// <summary>Hour at which a recipe is to be ready.</summary>
    public Option<string[]> By { get; } = Value("--by");

    /// <summary>Temperature of a place made warm.</summary>
    public Option<string[]> To { get; } = Value("--to");

    public Option<string[]> Step { get; } = Value("--step");

    /// <summary>What the lamp of an oven takes.</summary>
    public Option<string[]> Lamp { get; } = Value("--lamp");

    public Option<bool> OpenWater { get; } = new("--open-water");

    /// <summary>Which of the places made warm is drawn.</summary>
    public Option<string[]> In { get; } = Value("--in");

    public Command Findings { get; } = new("findings");

    public Command Formula { get; } = new("formula");

    public Command Rehearse { get; } = new("rehearse");

    public Command Picture { get; } = new("picture");

    public Command Resize { get; } = new("resize");

    public Command Swap { get; } = new("swap");

    public Command Page { get; } = new("page");

    public Command Larder { get; } = new("larder");

    public Command Place { get; } = new("place");

    public Command Evidence { get; } = new("evidence");

    public Command Ready { get; } = new("ready");

    /// <summary>The author's book as a whole.</summary>
    public Command Book { get; } = new("book");

    public Command Compare { get; } = new("compare");

    public RootCommand Root { get; } = [];

    public Options()
    {
        Root.Options.Clear();
        Root.TreatUnmatchedTokensAsErrors = false;
        AddTo(Root, Help, Version, Json, Measures, Port, Folder, NoBrowser);
        foreach (var command in Commands)
        {
            command.TreatUnmatchedTokensAsErrors = false;
            command.Add(File);
            Root.Add(command);
        }

        AddTo(Findings, Do, Accept);
        AddTo(Formula, Weighed);
        AddTo(Page, Out, Kitchen);
        AddTo(Larder, Region, Folder);
        AddTo(
            Rehearse, Kitchen, Air, Start, Ingredients, Altitude, Oven, Tap, Fridge, Proof, At, Pour, Bowl, Variant, Weighed, Dough, Free, Why);
        AddTo(
            Picture, PictureOf, Step, To, In, Lamp, OpenWater, As, Out, Width, Ground, Kitchen, Air, Start, Ingredients, Altitude, Oven, Tap, Fridge, Proof, At, Pour, Bowl, Variant, Weighed, Dough, Free);
        AddTo(
            Place, To, Step, Lamp, OpenWater, Kitchen, Air, Start, Ingredients, Altitude, Oven, Tap, Fridge, At, Pour, Bowl, Variant, Weighed, Dough, Free);
        AddTo(Ready, Start, By, Kitchen, Air, Ingredients, Altitude, Oven, Tap, Fridge, Proof, At, Pour, Bowl, Variant, Weighed);
        AddTo(Book, Folder, Out);
        AddTo(Compare, Because, Kitchen, Air, Start, Ingredients, Altitude, Oven, Tap, Fridge, Proof);
        AddTo(Swap, Replace);
        AddTo(Resize, Pieces, Piece, DoughMass, Have, Tin, Tray, Trays, Take, Kitchen);
    }

    public IReadOnlyList<Command> Commands => [Findings, Formula, Rehearse, Resize, Swap, Compare, Page, Place, Ready, Larder, Picture, Evidence, Book];

    /// <summary>No response files and no bundled letters: "@" and "-3C" are what people typed.</summary>
    public ParseResult Parse(string[] arguments) =>
        Root.Parse(arguments, new ParserConfiguration { EnablePosixBundling = false, ResponseFileTokenReplacer = null });

    /// <summary>Options that a command knows, its own and those of all commands.</summary>
    public IEnumerable<Option> Of(Command command) => command == Root ? Root.Options : command.Options.Concat(Root.Options.Where(option => option.Recursive));

    private static Option<string[]> Value(string name, bool recursive = false) => new(name)
    {
        Arity = ArgumentArity.ZeroOrMore,
        AllowMultipleArgumentsPerToken = false,
        Recursive = recursive,
    };

    private static void AddTo(Command command, params ReadOnlySpan<Option> options)
    {
        foreach (var option in options)
        {
            command.Add(option);
        }
    }
}
