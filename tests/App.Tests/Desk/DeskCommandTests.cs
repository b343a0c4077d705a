using System.Net;
using System.Net.Sockets;
using Doughwright.App.Commands;
using Doughwright.App.Desk;
using Doughwright.App.Desk.Hosting;
using Doughwright.App.Tests.Desk.Shelf;
using Doughwright.Engine.Quantities;
using Doughwright.Publishing.Wording;

namespace Doughwright.App.Tests.Desk;

/// <summary>What keeps the desk from being opened is said in words, and is no fault of ours.</summary>
public class DeskCommandTests
{
    private static readonly Voice Metric = new(Words.Shipped, MeasureSystem.Metric);

    [Theory]
    [InlineData("--folder", "")]
    [InlineData("--folder", " ")]
    [InlineData("--folder=", null)]
    public void FolderWithoutAName_IsRefused(string option, string? value)
    {
        var (code, said, opened) = Typed(value is null ? [option] : [option, value]);
        Assert.Equal(ExitCode.CommandLine, code);
        Assert.Contains("--folder", said, StringComparison.Ordinal);
        Assert.Null(opened);
    }

    [Fact]
    public void FolderThatIsAFile_IsRefused_AndNothingIsLeftBesideIt()
    {
        using var scratch = new Scratch();
        var file = Path.Join(scratch.Data.Root, "file");
        File.WriteAllText(file, "x");
        var (code, said) = Run(new(null, file, false));
        Assert.Equal(ExitCode.CommandLine, code);
        Assert.Contains(file, said, StringComparison.Ordinal);
        Assert.Contains("--folder DIR", said, StringComparison.Ordinal);
        Assert.Equal([file], Directory.GetFiles(scratch.Data.Root));
    }

    [Fact]
    public void MeasuresTyped_OpenTheDeskInThem()
    {
        var (_, _, opened) = Typed("--measures", "us");
        Assert.Equal(MeasureSystem.Us, opened!.Measures);
        Assert.Equal("http://127.0.0.1:7427/?measures=us", DeskCommand.AddressOf(7427, opened.Measures));
        Assert.Equal("http://127.0.0.1:7427/", DeskCommand.AddressOf(7427, Typed().Opened!.Measures));
    }

    [Fact]
    public void PortTakenAtTheLastMoment_IsSaid()
    {
        using var scratch = new Scratch();
        using var other = new TcpListener(IPAddress.Loopback, 0);
        other.Start();
        var port = ((IPEndPoint)other.LocalEndpoint).Port;
        using var output = new StringWriter();
        using var messages = new StringWriter();
        Assert.Equal(ExitCode.CommandLine, DeskCommand.Serve(port, scratch.Folder, new(port, null, false), output, messages, Metric));
        Assert.Contains(Metric.Say("port-taken.message", ("port", $"{port}")), messages.ToString(), StringComparison.Ordinal);
        Assert.Equal("", output.ToString());
    }

    [Fact]
    public void WhereNoPortIsFree_NoneIsOffered()
    {
        var faults = new Faults(Metric);
        DeskCommand.AddTaken(7500, null, faults);
        var fault = Assert.Single(faults.All);
        Assert.DoesNotContain("--port 0", fault.WayOut, StringComparison.Ordinal);
        Assert.Contains("7500", fault.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void WhatIsNotInTheBook_IsToldAtEachStart_UntilItIsDoneWith()
    {
        using var scratch = new Scratch();
        File.WriteAllText(Path.Join(scratch.Data.Recipes, "loaf.yaml"), "a text");
        File.WriteAllBytes(Path.Join(scratch.Data.Recipes, "latin.yaml"), [0x47, 0x72, 0xfc, 0xdf]);
        string[] Told() => [.. DeskCommand.FirstLines("http://127.0.0.1:7427/", scratch.Folder, Metric).Skip(2)];
        Assert.Equal(["Not laid into the book: recipes/latin.yaml. It is not all UTF-8. Save it as UTF-8 and open it on the page for that."], Told());
        Shelves.Close(scratch.Data);
        Assert.Single(Told());
        Shelves.Close(scratch.Data);
        File.WriteAllText(Path.Join(scratch.Data.Recipes, "latin.yaml"), "put right");
        Assert.Equal(["Not laid into the book: recipes/latin.yaml. It can be read by now. Open it on the page for that."], Told());
        Assert.True(scratch.Folder.Left.Forget("recipes/latin.yaml"));
        Assert.Empty(Told());
    }

    private static (int Code, string Said) Run(DeskOptions options)
    {
        using var output = new StringWriter();
        using var messages = new StringWriter();
        return (DeskCommand.Run(options, output, messages, Metric), messages.ToString());
    }

    private static (int Code, string Said, DeskOptions? Opened) Typed(params string[] arguments)
    {
        DeskOptions? opened = null;
        using var output = new StringWriter();
        using var messages = new StringWriter();
        var code = Cli.Run(arguments, Stream.Null, output, messages, openDesk: (desk, _) =>
        {
            opened = desk;
            return ExitCode.Done;
        });
        return (code, messages.ToString(), opened);
    }
}
