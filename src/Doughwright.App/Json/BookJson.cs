using System.Text.Json;
using Doughwright.App.Commands;

namespace Doughwright.App.Json;

/// <summary>The object of "book", the same for all it can do.</summary>
internal static class BookJson
{
    public static string Write(BookDone done) => JsonText.Of(json =>
    {
        json.WriteString("what", done.What);
        json.WriteString("book", done.Book);
        json.WriteBoolean("done", done.Done);
        json.WriteString("file", done.File);
        json.WriteString("setAside", done.SetAside);
        WriteSize(json, done);
        json.Array("flaws", done.Flaws, flaw =>
        {
            json.WriteString("kind", JsonText.Name(flaw.Kind));
            json.WriteString("what", flaw.What);
        });
        json.Array("papers", done.Papers, paper =>
        {
            json.WriteString("sort", JsonText.Name(paper.Sort));
            json.WriteString("uid", paper.Uid);
            json.WriteString("name", paper.Name);
            json.WriteString("as", paper.As);
            json.WriteString("becomes", JsonText.Name(paper.Becomes));
        });
        json.Array("copies", done.Copies, copy =>
        {
            json.WriteString("file", copy.Path);
            json.WriteString("at", copy.At);
        });
        json.WriteString("latestSound", done.LatestSound?.Path);
    });

    private static void WriteSize(Utf8JsonWriter json, BookDone done)
    {
        if (done.Size is not { } size)
        {
            json.WriteNull("holds");
            return;
        }

        json.WriteStartObject("holds");
        json.WriteNumber("papers", size.Papers);
        json.WriteNumber("states", size.States);
        json.WriteNumber("kept", size.Kept);
        json.WriteNumber("photos", size.Photos);
        json.WriteEndObject();
    }
}
