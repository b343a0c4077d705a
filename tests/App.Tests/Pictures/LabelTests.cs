namespace Doughwright.App.Tests.Pictures;

/// <summary>Texts in pictures can be read: none lies on another, none leaves the picture.</summary>
public class LabelTests
{
    public static TheoryData<bool, bool> Ways => new() { { false, false }, { false, true }, { true, false }, { true, true } };

    [Theory]
    [MemberData(nameof(Ways))]
    public void NoText_LiesOnAnother(bool us, bool phone)
    {
        var faults = new List<string>();
        foreach (var (name, picture) in AllPictures.Of(us ? PictureSamples.Us : PictureSamples.Metric))
        {
            var lines = new Drawn(picture).Lines(phone && !name.StartsWith("slips", StringComparison.Ordinal));
            for (var i = 0; i < lines.Count; i++)
            {
                faults.AddRange(lines.Skip(i + 1).Where(other => other.Box.Overlaps(lines[i].Box)).Select(other => $"{name}: '{lines[i].Text}' and '{other.Text}'"));
            }
        }

        Assert.Equal([], faults);
    }

    [Theory]
    [MemberData(nameof(Ways))]
    public void NoText_LeavesThePicture(bool us, bool phone)
    {
        var faults = new List<string>();
        foreach (var (name, picture) in AllPictures.Of(us ? PictureSamples.Us : PictureSamples.Metric))
        {
            var drawn = new Drawn(picture);
            faults.AddRange(drawn.Lines(phone && !name.StartsWith("slips", StringComparison.Ordinal))
                .Where(line => line.Box.Left < -0.5 || line.Box.Right > drawn.Width + 0.5 || line.Box.Top < -0.5 || line.Box.Bottom > drawn.Height + 0.5)
                .Select(line => $"{name}: '{line.Text}' {line.Box} in {drawn.Width} x {drawn.Height}"));
        }

        Assert.Equal([], faults);
    }

    /// <summary>Time and range of every rise, and every kitchen beside it, are named in the picture itself.</summary>
    [Fact]
    public void EveryRise_SaysItsTime_AndNamesEveryCurve()
    {
        var faults = new List<string>();
        var voice = PictureSamples.Metric;
        foreach (var (name, run) in DemoRuns.All)
        {
            foreach (var rise in run.Course().Rises)
            {
                var step = run.FindStep(rise.Step)!;
                var others = AllPictures.Others(run, rise.Step, 2);
                var texts = new Drawn(Publishing.Pictures.Rise.RisePicture.Draw(rise, step, others, voice, "r")).Texts;
                var wanted = others.Select(other => voice.Say("rise.other", ("name", other.Name), ("time", Publishing.Pictures.Rise.RiseTime.Of(other.Time, voice))))
                    .Append(step.Time is { } time ? voice.Text(time.Likely) : voice.Say("rise.never"));
                faults.AddRange(wanted.Where(word => !texts.Any(text => text.EndsWith(word, StringComparison.Ordinal))).Select(word => $"{name}, {rise.Step}: {word}"));
            }
        }

        Assert.Equal([], faults);
    }
}
