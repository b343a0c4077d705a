using System.Globalization;
using System.Text.Json;
using Dapper;
using Doughwright.Book.Papers;
using Doughwright.Engine.TextForm;
using Microsoft.Data.Sqlite;

namespace Doughwright.Book.Exchange;

/// <summary>Makes a book of its own from an export. Nothing goes on from there unless all of it is sound.</summary>
internal sealed class Staging(SqliteConnection open, Unpacked files, PhotoLook look, ExchangeFaults faults)
{
    /// <summary>The library's number for a row that its table does not take.</summary>
    private const int Refused = 19;

    private const int LongestName = 200;

    private readonly Rows rows = new(files, faults);
    private readonly Dictionary<string, (long Id, string File, int Now)> papers = new(StringComparer.Ordinal);
    private readonly Dictionary<(string Uid, int Number), long> states = [];
    private readonly Dictionary<(string Uid, int Number), long> kept = [];

    public void Take()
    {
        if (!IsOfThisForm())
        {
            return;
        }

        var grown = TakePapers();
        TakeStates();
        foreach (var (uid, paper) in papers)
        {
            Set("UPDATE paper SET now = @state WHERE id = @paper", Layout.Papers, 0, new { state = StateOf(Layout.Papers, 0, uid, paper.Now), paper = paper.Id });
        }

        foreach (var (line, uid, from, number) in grown)
        {
            Set("UPDATE paper SET grown_from = @state WHERE id = @paper", Layout.Papers, line, new { state = StateOf(Layout.Papers, line, from, number), paper = papers[uid].Id });
        }

        TakeRest();
        TakePhotos();
        foreach (var name in files.Unused)
        {
            faults.Add("import-stranger", ("name", name));
        }
    }

    private bool IsOfThisForm()
    {
        if (files.Text(Layout.Mark) is not { } text)
        {
            return false;
        }

        try
        {
            using var mark = JsonDocument.Parse(text);
            if (mark.RootElement.GetProperty("form").GetInt32() is var form && form <= Layout.Form)
            {
                return true;
            }

            faults.Add("import-newer", ("number", form.ToString(CultureInfo.InvariantCulture)));
        }
        catch (Exception problem) when (problem is JsonException or InvalidOperationException or KeyNotFoundException or FormatException)
        {
            faults.Add("import-line-shape", ("file", Layout.Mark), ("line", 1));
        }

        return false;
    }

    private List<(int Line, string Uid, string From, int State)> TakePapers()
    {
        List<(int, string, string, int)> grown = [];
        foreach (var row in rows.Of(Layout.Papers, 8))
        {
            if (!IsName(row[2]) || row.Number(4) is not { } now)
            {
                row.Wrong(row[2]);
                continue;
            }

            var id = Add(
                "INSERT INTO paper (uid, sort, name, taken_away) VALUES (@uid, @sort, @name, @away) RETURNING id",
                Layout.Papers, row.Line, new { uid = row[0], sort = row[1], name = row[2], away = row.OrNull(7) });
            if (id is { } made)
            {
                papers[row[0]] = (made, row[3], now);
                if (row.OrNull(5) is { } from && row.Number(6) is { } state)
                {
                    grown.Add((row.Line, row[0], from, state));
                }
            }
        }

        return grown;
    }

    private void TakeStates()
    {
        Dictionary<string, string> present = new(StringComparer.Ordinal);
        foreach (var (uid, paper) in papers)
        {
            if (files.Text(paper.File) is { } text)
            {
                present[uid] = Bodies.Store(open, text);
            }
        }

        foreach (var (number, line) in files.Lines(Layout.States))
        {
            if (StateLine.Read(line) is not { } state)
            {
                faults.Add("import-line-shape", ("file", Layout.States), ("line", number));
                continue;
            }

            if (!papers.TryGetValue(state.Paper, out var paper) || (state.Before is { } earlier && !states.ContainsKey((state.Paper, earlier))))
            {
                faults.Add("import-line-unknown", ("file", Layout.States), ("line", number), ("what", state.Paper));
                continue;
            }

            if (state.Text is { } text && StateId.OfText(text) != state.Hash)
            {
                faults.Add("import-text-differs", ("file", Layout.States), ("line", number));
                continue;
            }

            if (state.Text is { } own)
            {
                _ = Bodies.Store(open, own);
            }
            else if (state.Number == paper.Now && present.TryGetValue(state.Paper, out var hash) && hash != state.Hash)
            {
                faults.Add("import-file-differs", ("name", paper.File));
                continue;
            }

            var id = Add(
                "INSERT INTO state (paper, before, hash, at, did) VALUES (@Id, @before, @Hash, @At, @Did) RETURNING id",
                Layout.States, number, new { paper.Id, before = state.Before is { } before ? states[(state.Paper, before)] : (long?)null, state.Hash, state.At, state.Did });
            if (id is { } made && !states.TryAdd((state.Paper, state.Number), made))
            {
                faults.Add("import-line-value", ("file", Layout.States), ("line", number), ("value", state.Number.ToString(CultureInfo.InvariantCulture)));
            }
        }
    }

    private void TakeRest()
    {
        foreach (var row in rows.Of(Layout.StepsBack, 3))
        {
            if (row.Number(1) is { } state && row.Number(2) is { } onward && IdOf(Layout.StepsBack, row.Line, row[0]) is { } paper)
            {
                Set(
                    "INSERT INTO step_back (paper, state, onward) VALUES (@paper, @state, @onward)", Layout.StepsBack, row.Line,
                    new { paper, state = StateOf(Layout.StepsBack, row.Line, row[0], state), onward = StateOf(Layout.StepsBack, row.Line, row[0], onward) });
            }
        }

        foreach (var row in rows.Of(Layout.Kept, 7))
        {
            if (row.Number(1) is { } number && row.Number(2) is { } state && row.YesNo(6) is { } published && StateOf(Layout.Kept, row.Line, row[0], state) is { } of
                && Add(
                    "INSERT INTO kept (state, at, name, note, published) VALUES (@of, @at, @name, @note, @published) RETURNING id", Layout.Kept, row.Line,
                    new { of, at = row[3], name = row[4], note = row[5], published = published ? 1 : 0 }) is { } made
                && !kept.TryAdd((row[0], number), made))
            {
                row.Wrong(row[1]);
            }
        }

        foreach (var row in rows.Of(Layout.Corrections, 6))
        {
            if (row.Number(1) is not { } number)
            {
                continue;
            }

            if (!kept.TryGetValue((row[0], number), out var of) || !(row[5].Length == 0 || row[5].StartsWith("done ", StringComparison.Ordinal)))
            {
                row.Wrong(row[1]);
                continue;
            }

            Set(
                "INSERT INTO correction (kept, at, text, place, done) VALUES (@of, @at, @text, @place, @done)", Layout.Corrections, row.Line,
                new { of, at = row[2], text = row[3], place = row[4], done = row[5].Length == 0 ? null : row[5][5..] });
        }

        foreach (var row in rows.Of(Layout.Said, 4))
        {
            if (IdOf(Layout.Said, row.Line, row[0]) is { } paper)
            {
                Set("INSERT INTO said (paper, at, what, value) VALUES (@paper, @at, @what, @value)", Layout.Said, row.Line, new { paper, at = row[1], what = row[2], value = row[3] });
            }
        }
    }

    private void TakePhotos()
    {
        foreach (var row in rows.Of(Layout.Photos, 3))
        {
            if (files.Bytes(row[2]) is not { } bytes)
            {
                continue;
            }

            if (!PhotoBytes.AreOf(row[1], bytes) || Photos.HashOf(bytes) != row[0])
            {
                faults.Add("import-no-photo", ("name", row[2]));
                continue;
            }

            foreach (var fault in look(row[2], bytes))
            {
                faults.Add(fault.Kind, fault.Arguments);
            }

            Set("INSERT INTO photo (hash, type, bytes) VALUES (@hash, @type, @bytes)", Layout.Photos, row.Line, new { hash = row[0], type = row[1], bytes });
        }

        foreach (var row in rows.Of(Layout.PhotosOf, 4))
        {
            if (IdOf(Layout.PhotosOf, row.Line, row[0]) is { } paper)
            {
                Set("INSERT INTO photo_of (paper, hash, at, words) VALUES (@paper, @hash, @at, @words)", Layout.PhotosOf, row.Line, new { paper, hash = row[1], at = row[2], words = row[3] });
            }
        }
    }

    /// <summary>Names stand in addresses and in files' names.</summary>
    private static bool IsName(string name) => name.Length is > 0 and <= LongestName && name.Trim('.').Length > 0 && !name.Any(letter => char.IsControl(letter) || letter is '/' or '\\');

    private long? IdOf(string file, int line, string uid)
    {
        if (papers.TryGetValue(uid, out var paper))
        {
            return paper.Id;
        }

        faults.Add("import-line-unknown", ("file", file), ("line", line), ("what", uid));
        return null;
    }

    private long? StateOf(string file, int line, string uid, int number)
    {
        if (states.TryGetValue((uid, number), out var state))
        {
            return state;
        }

        faults.Add("import-line-unknown", ("file", file), ("line", line), ("what", string.Create(CultureInfo.InvariantCulture, $"{uid} {number}")));
        return null;
    }

    private void Set(string statement, string file, int line, object values) => Trying(file, line, () => (long?)open.Execute(statement, values));

    private long? Add(string statement, string file, int line, object values) => Trying(file, line, () => open.ExecuteScalar<long?>(statement, values));

    /// <summary>A row that its table does not take: something twice, of no known sort, or belonging to nothing.</summary>
    private long? Trying(string file, int line, Func<long?> write)
    {
        try
        {
            return write();
        }
        catch (SqliteException problem) when (problem.SqliteErrorCode == Refused)
        {
            faults.Add("import-row-refused", ("file", file), ("line", line));
            return null;
        }
    }
}
