using System.CommandLine;
using Doughwright.App.Commands;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Text;

/// <summary>What the program can do, and what one command takes.</summary>
internal static class HelpText
{
    public static string Write(Command command, Options options, Voice voice)
    {
        var page = new Page();
        if (command == options.Root)
        {
            page.Paragraph(voice.Words["help.about"]);
            page.Gap();
            foreach (var known in options.Commands)
            {
                page.Paragraph(voice.Words[$"help.{known.Name}.usage"], 2);
                page.Paragraph(voice.Words[$"help.{known.Name}"], 6);
            }

            page.Gap();
            page.Paragraph(voice.Words["help.example"]);
            page.Paragraph(voice.Words["help.example.line"], 2);
            page.Gap();
            page.Paragraph(voice.Words["help.more"]);
            return page.ToString();
        }

        page.Paragraph(voice.Words[$"help.{command.Name}.usage"]);
        page.Paragraph(voice.Words[$"help.{command.Name}"], 2);
        page.Gap();
        page.Paragraph(voice.Words[command == options.Larder ? "help.words"
            : command == options.Evidence ? "help.folder"
            : command == options.Book ? "help.book-file"
            : "help.file"]);
        page.Gap();
        foreach (var option in options.Of(command))
        {
            var value = voice.Words.Find($"example.{command.Name}{option.Name[1..]}") ?? voice.Words.Find($"example{option.Name[1..]}");
            page.Paragraph(value is null ? option.Name : $"{option.Name} {value}", 2);
            page.Paragraph(voice.Words.Find($"help.{command.Name}{option.Name[1..]}") ?? voice.Words[$"help{option.Name[1..]}"], 6);
        }

        if (options.Of(command).Contains(options.Kitchen))
        {
            page.Gap();
            page.Paragraph(voice.Say("help.kitchens", ("kitchens", KitchenShelf.Names)));
        }

        return page.ToString();
    }
}
