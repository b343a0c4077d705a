using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Dapper;
using Doughwright.Book.Opening;
using Doughwright.Book.Papers;
using Doughwright.Book.Safety;
using Microsoft.Data.Sqlite;

namespace Doughwright.Book.Exchange;

/// <summary>Writes a book out as plain files that any editor, spreadsheet and picture viewer opens, and that give an equal book again.</summary>
internal static class Exporting
{
    private static readonly JsonWriterOptions OneLine = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };
    private static readonly UTF8Encoding Utf8 = new(false);

    /// <param name="to">A folder that is not there or empty, or a file ending in .zip that is not there.</param>
    /// <param name="most">Files of an archive; one with more would not be taken in again.</param>
    /// <returns>Papers that were written.</returns>
    /// <exception cref="BookException">It cannot be read, or the files cannot be written; nothing stays of them.</exception>
    public static int Write(BookFile file, string to, int most = Guard.MostFiles)
    {
        var whole = BookPaths.Real(to);
        var isArchive = whole.EndsWith(".zip", StringComparison.OrdinalIgnoreCase);
        var beside = $"{whole}.{Path.GetRandomFileName()}.unfinished";
        try
        {
            if (File.Exists(whole) || (Directory.Exists(whole) && (isArchive || Directory.EnumerateFileSystemEntries(whole).Any())))
            {
                throw new BookException(BookTrouble.Taken, whole, "");
            }

            var written = file.Read(open =>
            {
                var (papers, photos) = (RecordReader.All(open), PhotosOf(open));
                if (isArchive && 1 + Layout.Tables.Count + papers.Count + photos.Length is var files && files > most)
                {
                    throw new BookException(BookTrouble.TooMany, whole, files.ToString("#,0", CultureInfo.InvariantCulture));
                }

                using ISink sink = isArchive ? new ArchiveSink(beside) : new FolderSink(beside);
                Write(open, file.Path, papers, photos, sink);
                return papers.Count;
            });
            Finish(beside, whole, isArchive);
            return written;
        }
        catch (Exception problem) when (BookException.Of(problem, whole) is { } told)
        {
            throw told;
        }
        finally
        {
            Copies.DeleteQuietly(beside);
            if (Directory.Exists(beside))
            {
                Directory.Delete(beside, recursive: true);
            }
        }
    }

    private static void Finish(string beside, string to, bool isArchive)
    {
        if (isArchive)
        {
            Copies.Put(beside, to, overwrite: false);
            return;
        }

        if (Directory.Exists(to))
        {
            Directory.Delete(to);
        }

        Directory.Move(beside, to);
        FolderSync.Flush(Path.GetDirectoryName(to)!);
    }

    private static void Write(SqliteConnection open, string path, IReadOnlyList<PaperRecord> papers, PhotoRow[] photos, ISink sink)
    {
        Text(sink, Layout.Mark, string.Create(CultureInfo.InvariantCulture, $"{{ \"form\": {Layout.Form} }}\n"));
        HashSet<string> taken = new(StringComparer.Ordinal);
        var files = papers.ToDictionary(paper => paper.Uid, paper => Layout.FileOf(SortOf(paper), paper.Name, taken), StringComparer.Ordinal);
        Table(sink, Layout.Papers, ["uid", "sort", "name", "file", "now", "grown from", "grown from state", "taken away"], papers.Select(paper => new[]
        {
            paper.Uid, paper.Sort, paper.Name, files[paper.Uid], Number(paper.Now), paper.GrownFrom?.Uid, paper.GrownFrom is { } from ? Number(from.State) : null, paper.TakenAway,
        }));
        foreach (var paper in papers)
        {
            Text(sink, files[paper.Uid], TextOf(open, path, paper.States[paper.Now - 1].Hash));
        }

        sink.Write(Layout.States, stream => States(stream, papers, hash => TextOf(open, path, hash)));
        Table(sink, Layout.StepsBack, ["paper", "state", "onward"], papers.SelectMany(paper => paper.StepsBack.Select(step => new[] { paper.Uid, Number(step.State), Number(step.Onward) })));
        Table(sink, Layout.Kept, ["paper", "number", "state", "at", "name", "note", "published"], papers.SelectMany(paper => paper.Kept.Select((kept, i) => new[]
        {
            paper.Uid, Number(i + 1), Number(kept.State), kept.At, kept.Name, kept.Note, kept.Published ? "yes" : "no",
        })));
        Table(sink, Layout.Corrections, ["paper", "kept", "at", "text", "place", "done"], papers.SelectMany(paper => paper.Kept.SelectMany((kept, i) => kept.Corrections.Select(one => new[]
        {
            paper.Uid, Number(i + 1), one.At, one.Text, one.Place, one.Done is null ? "" : "done " + one.Done,
        }))));
        Table(sink, Layout.Said, ["paper", "at", "what", "value"], papers.SelectMany(paper => paper.Said.Select(said => new[] { paper.Uid, said.At, said.What, said.Value })));
        Table(sink, Layout.PhotosOf, ["paper", "photo", "at", "words"], papers.SelectMany(paper => paper.Photos.Select(photo => new[] { paper.Uid, photo.Hash, photo.At, photo.Words })));
        Table(sink, Layout.Photos, ["photo", "type", "file"], photos.Select(photo => new[] { photo.Hash, photo.Type, FileOf(photo) }));
        foreach (var photo in photos)
        {
            sink.Write(FileOf(photo), stream => stream.Write(open.ExecuteScalar<byte[]>("SELECT bytes FROM photo WHERE hash = @Hash", photo)));
        }
    }

    private static PhotoRow[] PhotosOf(SqliteConnection open) => [.. open.Query<PhotoRow>("SELECT hash AS Hash, type AS Type FROM photo ORDER BY hash")];

    /// <summary>One line for each state. A text stands in its first state, but for the present one, which is a file.</summary>
    private static void States(Stream stream, IEnumerable<PaperRecord> papers, Func<string, string> text)
    {
        foreach (var paper in papers)
        {
            HashSet<string> written = [paper.States[paper.Now - 1].Hash];
            foreach (var state in paper.States)
            {
                using (var json = new Utf8JsonWriter(stream, OneLine))
                {
                    json.WriteStartObject();
                    json.WriteString("paper", paper.Uid);
                    json.WriteNumber("state", state.Number);
                    if (state.Before is { } before)
                    {
                        json.WriteNumber("before", before);
                    }

                    json.WriteString("at", state.At);
                    json.WriteString("did", state.Did);
                    json.WriteString("hash", state.Hash);
                    if (written.Add(state.Hash))
                    {
                        json.WriteString("text", text(state.Hash));
                    }

                    json.WriteEndObject();
                }

                stream.WriteByte((byte)'\n');
            }
        }
    }

    private static PaperSort SortOf(PaperRecord paper) => Enum.Parse<PaperSort>(paper.Sort, ignoreCase: true);

    private static string TextOf(SqliteConnection open, string path, string hash) => Bodies.Read(open, path, "body WHERE body.hash = @hash", new { hash })!;

    private static string FileOf(PhotoRow photo) => $"{Layout.PhotoFolder}/{photo.Hash}{Layout.PhotoEndings.GetValueOrDefault(photo.Type, ".photo")}";

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static void Text(ISink sink, string name, string text) => sink.Write(name, stream => stream.Write(Utf8.GetBytes(text)));

    private static void Table(ISink sink, string name, string[] head, IEnumerable<string?[]> rows) =>
        Text(sink, name, Csv.Line(head) + string.Concat(rows.Select(row => Csv.Line(row))));

    private sealed record PhotoRow(string Hash, string Type);
}
