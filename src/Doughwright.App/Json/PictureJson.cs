using Doughwright.App.Commands;
using Doughwright.Engine.Remedies;
using Doughwright.Publishing.Pictures.Files;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Json;

/// <summary>The object of "picture".</summary>
internal static class PictureJson
{
    /// <param name="made">Null when no picture could be drawn.</param>
    public static string Write(Stamp stamp, (PictureAsked Asked, PictureFile File)? made, int bytes, Judgement findings, Voice voice) => JsonText.Of(json =>
    {
        stamp.WriteTo(json);
        json.WriteString("file", made?.Asked.Out.Path);
        json.Number("widthPixels", made?.File.WidthPixels);
        json.Number("heightPixels", made?.File.HeightPixels);
        json.Number("bytes", made is null ? null : bytes);
        FindingsJson.WriteJudged(json, findings, voice);
    });
}
