namespace Doughwright.App.Tests.Commands;

/// <summary>Options of the command line: every wrong one is told, in words, at once.</summary>
public class OptionTests
{
    private static Run Rehearse(params string[] options) => Run.Of(["rehearse", House.PotatoRolls, .. options]);

    [Fact]
    public void SeveralFaults_AreToldAtOnce()
    {
        var run = Rehearse("--air", "17", "--tap", "90C", "--at", "potatoo=20C", "--bowl", "mixx=none", "--kitchen", "winter-cotage", "--oven", "gas");
        Assert.Equal(2, run.ExitCode);
        foreach (var word in new[] { "--air", "--tap", "potatoo", "mixx", "winter-cotage", "winter-cottage", "gas" })
        {
            Assert.Contains(word, run.Messages, StringComparison.Ordinal);
        }
    }

    /// <summary>Nothing between quotes is no value, whichever option it stands behind, and never a message of the runtime.</summary>
    [Theory]
    [InlineData("rehearse", "air altitude at bowl dough fridge free ingredients kitchen measures oven pour proof start tap variant weighed why")]
    [InlineData("resize", "dough have kitchen piece pieces take tin tray trays")]
    [InlineData("picture", "as ground of out width")]
    [InlineData("place", "lamp step to")]
    [InlineData("ready", "by start")]
    [InlineData("compare", "air altitude fridge ingredients kitchen oven proof start tap")]
    [InlineData("findings", "accept do")]
    [InlineData("swap", "replace")]
    [InlineData("page", "kitchen out")]
    [InlineData("larder", "region")]
    [InlineData("book", "folder out")]
    public void BlankValues_AreNoValues(string command, string options)
    {
        foreach (var option in options.Split(' '))
        {
            foreach (var blank in new[] { "", "   ", "\u00a0" })
            {
                var run = Run.Of(command, House.PotatoRolls, "--" + option, blank);
                Assert.Equal(2, run.ExitCode);
                Assert.Contains($"--{option} has no value.", run.Messages, StringComparison.Ordinal);
            }
        }
    }

    [Theory]
    [InlineData("rehearse", "--at", "potato=  ")]
    [InlineData("rehearse", "--bowl", "mix=\t")]
    [InlineData("rehearse", "--weighed", "potato= ")]
    [InlineData("rehearse", "--variant", "mix= ")]
    [InlineData("resize", "--have", "potato= ")]
    [InlineData("resize", "--take", "egg= ")]
    [InlineData("findings", "--accept", "egg-not-whole@parts.dough.egg=   ")]
    [InlineData("findings", "--accept", "nonsense=")]
    public void ANameWithNothingBehindIt_SaysSo(string command, string option, string value)
    {
        var run = Run.Of(command, House.PotatoRolls, option, value);
        Assert.Equal(2, run.ExitCode);
        Assert.Contains($"{option}: behind “{value[..^1].Split('=')[0]}=” nothing is written.", run.Messages, StringComparison.Ordinal);
    }

    /// <summary>What is counted comes whole, and a command line has no lines that could be left out.</summary>
    [Theory]
    [InlineData("resize", "--pieces", "2.5", "“2.5” is no whole number")]
    [InlineData("resize", "--trays", "1.5", "“1.5” is no whole number")]
    [InlineData("resize", "--pieces", "0", "0 pieces lie outside 1 to 100,000.")]
    [InlineData("rehearse", "--altitude", "9000m", "above nobody lives and bakes")]
    [InlineData("rehearse", "--variant", "bulk=x", "It can be done in other ways only in ")]
    public void CountsAndSteps_AreToldInPlainWords(string command, string option, string value, string told)
    {
        var run = Run.Of(command, House.PotatoRolls, option, value);
        var said = string.Join(' ', run.Messages.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries));
        Assert.Equal(2, run.ExitCode);
        Assert.Contains(told, said, StringComparison.Ordinal);
        Assert.DoesNotContain("line was left out", said, StringComparison.Ordinal);
    }

    /// <summary>A text in which nothing can be carried out has no list of ways out to name.</summary>
    [Fact]
    public void AWayOutWhereThereIsNone_IsNotAnsweredWithNothing()
    {
        const string Bare = "doughwright: 1\ntitle: Plain loaf\nhome:\n  air: 21 C\nparts:\n  dough:\n    strong white flour: 500 g\n    water: 340 g\n    salt: 10 g\n    instant yeast: 5 g\n";
        foreach (var given in new[] { "0", "nonsense" })
        {
            var run = Run.WithInput(Bare, "findings", "-", "--do", given);
            Assert.Equal(2, run.ExitCode);
            Assert.DoesNotContain("nothing", run.Messages, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void BareQuantity_SaysWhichUnitsFit()
    {
        var run = Rehearse("--air", "17");
        Assert.Equal(2, run.ExitCode);
        Assert.Contains("C, F", run.Messages, StringComparison.Ordinal);
        Assert.Contains("m, in, ft", Rehearse("--altitude", "1200").Messages, StringComparison.Ordinal);
    }

    /// <summary>Limits of the command line; each value lies just outside.</summary>
    [Theory]
    [InlineData("--air", "-5.1C", "−5", "45")]
    [InlineData("--air", "45.1C", "−5", "45")]
    [InlineData("--air=-6C", "", "−5", "45")]
    [InlineData("--altitude", "5001m", "−430", "5,000")]
    [InlineData("--altitude", "-431m", "−430", "5,000")]
    [InlineData("--fridge", "12.5C", "−2", "12")]
    [InlineData("--air", "17C@22:00,99C@07:00", "−5", "45")]
    public void OutOfLimits_IsTwo_WithTheLimit(string option, string value, string low, string high)
    {
        var arguments = value.Length == 0 ? new[] { option, "--start", "22:00" } : [option, value, "--start", "22:00"];
        var run = Rehearse(arguments);
        Assert.Equal(2, run.ExitCode);
        Assert.Contains(low, run.Messages, StringComparison.Ordinal);
        Assert.Contains(high, run.Messages, StringComparison.Ordinal);
    }

    /// <summary>Water boils at 100 °C at the sea and near 96 °C at 1,200 m.</summary>
    [Theory]
    [InlineData("5m", "100C", 0)]
    [InlineData("5m", "101C", 2)]
    [InlineData("1200m", "96C", 0)]
    [InlineData("1200m", "97C", 2)]
    [InlineData("5m", "-1C", 2)]
    public void Pour_EndsWhereWaterBoilsInTheKitchenAskedFor(string altitude, string poured, int code)
    {
        var run = Rehearse("--altitude", altitude, "--pour", poured);
        Assert.Equal(code, run.ExitCode);
        Assert.Equal(code == 2, run.Messages.Contains("boils", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("--at", "pottato=20C", "potato")]
    [InlineData("--bowl", "scalt=none", "scald")]
    [InlineData("--free", "scalt", "scald")]
    [InlineData("--why", "bulkk", "bulk")]
    [InlineData("--variant", "mixx=machine", "mix")]
    [InlineData("--variant", "bulk=machine", "mix")]
    [InlineData("--variant", "mix=blender", "machine")]
    [InlineData("--weighed", "pottato=200g:170g", "potato")]
    [InlineData("--bowl", "scald=stell:150g", "steel")]
    [InlineData("--measures", "imperial", "metric")]
    public void UnknownName_SaysWhatThereIs(string option, string value, string known)
    {
        var run = Rehearse(option, value);
        Assert.Equal(2, run.ExitCode);
        Assert.Contains(known, run.Messages, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--at", "20C")]
    [InlineData("--at", "=20C")]
    [InlineData("--at", "potato=")]
    [InlineData("--bowl", "scald=steel")]
    [InlineData("--bowl", "scald=steel:150g,cold")]
    [InlineData("--bowl", "scald=none,warmed")]
    [InlineData("--weighed", "potato=200g")]
    [InlineData("--weighed", "potato=0g:170g")]
    [InlineData("--air", "17C@22:00,21C@07:00")]
    [InlineData("--start", "25:00")]
    [InlineData("--start", "22")]
    [InlineData("--dough", "26C")]
    [InlineData("--free", "potato")]
    [InlineData("--air", "")]
    [InlineData("--kitchen", "")]
    [InlineData("--kitchen", "/")]
    [InlineData("--nonsense", "1")]
    public void Nonsense_IsTwo_AndNeverAFaultOfOurs(string option, string value)
    {
        var run = Rehearse(option, value);
        Assert.Equal(2, run.ExitCode);
        Assert.NotEmpty(run.Messages);
        Assert.Empty(run.Output);
    }

    [Fact]
    public void OptionWithoutValue_AndOptionTwice_AreTold()
    {
        Assert.Contains("--air", Rehearse("--air").Messages, StringComparison.Ordinal);
        Assert.Contains("18C", Rehearse("--air", "17C", "--air", "18C").Messages, StringComparison.Ordinal);
        Assert.Equal(2, Rehearse("--air", "--tap", "9C").ExitCode);
    }

    [Fact]
    public void MisspeltOptionWithItsValue_IsOneFault() =>
        Assert.Equal(2, Rehearse("--aer", "17C").Messages.Split('\n', StringSplitOptions.RemoveEmptyEntries).Length);

    [Fact]
    public void MissingFile_OffersTheNearest()
    {
        var run = Run.Of("formula", House.PotatoRolls.Replace("rolls", "rols", StringComparison.Ordinal));
        Assert.Equal(2, run.ExitCode);
        Assert.Contains("potato-rolls.yaml", run.Messages, StringComparison.Ordinal);
    }

    [Fact]
    public void FolderOrNothing_IsTwo()
    {
        Assert.Equal(2, Run.Of("formula", House.Root).ExitCode);
        Assert.Equal(2, Run.Of("formula").ExitCode);
        Assert.Equal(2, Run.Of("formula", "").ExitCode);
        Assert.Equal(2, Run.Of("formula", House.PotatoRolls, House.PotatoRolls).ExitCode);
        Assert.Equal(2, Run.Of("formula", "a\0b").ExitCode);
    }

    [Fact]
    public void BytesThatAreNoText_AreAFinding()
    {
        var bytes = File.ReadAllBytes(House.PotatoRolls);
        bytes[Array.IndexOf(bytes, (byte)'P')] = 0xff;
        using var input = new MemoryStream(bytes);
        using var output = new StringWriter();
        using var messages = new StringWriter();
        Assert.Equal(3, Cli.Run(["findings", "-"], input, output, messages));
        Assert.Contains("UTF-8", output.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void NothingTyped_SteersTheTerminal()
    {
        var run = Rehearse("--at", "\u001b[31mred\u0007=20C");
        Assert.DoesNotContain('\u001b', run.Messages);
        Assert.DoesNotContain('\u0007', run.Messages);
    }

    [Fact]
    public void EveryMessage_FitsTheTerminal()
    {
        var run = Rehearse("--at", new string('x', 400) + "=20C", "--kitchen", "y");
        Assert.All(run.Messages.Split('\n'), line => Assert.InRange(line.Length, 0, 100));
    }
}
