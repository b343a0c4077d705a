using Doughwright.Engine.Remedies;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Json;

/// <summary>The object of "page".</summary>
internal static class PageJson
{
    /// <param name="file">Where the page lies.</param>
    /// <param name="bytes">Size of the page.</param>
    public static string Write(Stamp stamp, string title, string file, int bytes, Judgement findings, Voice voice) => JsonText.Of(json =>
    {
        stamp.WriteTo(json);
        json.WriteString("title", title);
        json.WriteString("file", file);
        json.WriteNumber("bytes", bytes);
        FindingsJson.WriteJudged(json, findings, voice);
    });
}
