using Doughwright.App.Commands;
using Doughwright.Engine.Recipes;
using Doughwright.Engine.Rehearsals;
using Doughwright.Engine.Remedies;
using Doughwright.Publishing.Pictures.Files;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Text;

/// <summary>What "picture" says: which file, how large. Errors and what concerns the picture itself are told, the rest by their number.</summary>
internal static class PictureText
{
    private const string OfPictures = "picture-";
    private const int BytesPerKilobyte = 1000;

    public static string Write(Rehearsal rehearsal, (PictureAsked Asked, PictureFile File)? made, int bytes, Judgement findings, Voice voice)
    {
        if (made is not { } picture)
        {
            return FindingsText.Write(rehearsal.Recipe.Title, findings.Open, voice, quote: false, accepted: findings.Accepted);
        }

        var page = new Page();
        page.Paragraph(voice.Say(
            "picture.written",
            ("file", picture.Asked.Out.Path),
            ("title", rehearsal.Recipe.Title),
            ("width", picture.File.WidthPixels),
            ("height", picture.File.HeightPixels),
            ("size", (bytes + BytesPerKilobyte - 1) / BytesPerKilobyte)));
        var told = findings.Open.Where(finding => finding.Grade == Grade.Error || finding.Kind.StartsWith(OfPictures, StringComparison.Ordinal)).ToList();
        if (told.Count > 0)
        {
            page.Gap();
            FindingsText.WriteSection(page, told, voice);
        }

        return page.ToString();
    }
}
