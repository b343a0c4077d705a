using System.Globalization;
using System.Net;
using System.Net.Sockets;
using System.Runtime.Versioning;
using Doughwright.Browser.Tests.Running;

namespace Doughwright.Browser.Tests.Launching;

/// <summary>The desk listens on this machine only, whatever stands in the environment; it starts and ends quickly.</summary>
[UnsupportedOSPlatform("windows")]
public class ListeningTests(House house)
{
    [Fact]
    public void Desk_ListensOnLoopbackOnly() => Assert.Equal([$"127.0.0.1:{house.Desk.Port}"], Listening(house.Desk.ProcessId));

    [Fact(Timeout = Visit.Patience)]
    public async Task Environment_OpensNoOtherAddress_AndTellsNoMoreOfFaults()
    {
        var other = RunningDesk.FreePort();
        await using var desk = await RunningDesk.Open(environment:
        [
            ("ASPNETCORE_URLS", $"http://0.0.0.0:{other}"),
            ("DOTNET_URLS", $"http://0.0.0.0:{other}"),
            ("ASPNETCORE_HTTP_PORTS", $"{other}"),
            ("Kestrel__Endpoints__Other__Url", $"http://0.0.0.0:{other}"),
            ("ASPNETCORE_ENVIRONMENT", "Development"),
            ("DOTNET_ENVIRONMENT", "Development"),
            ("AllowedHosts", "*"),
        ]);
        Assert.Equal([$"127.0.0.1:{desk.Port}"], Listening(desk.ProcessId));
        using var client = new HttpClient();
        Assert.Equal(HttpStatusCode.OK, (await client.GetAsync(desk.Address, TestContext.Current.CancellationToken)).StatusCode);
    }

    [Fact(Timeout = Visit.Patience)]
    public async Task CtrlC_EndsTheDesk_QuicklyAndWell()
    {
        await using var desk = await RunningDesk.Open();
        var (code, took) = await desk.PressCtrlC();
        Assert.Equal(0, code);
        Assert.InRange(took, TimeSpan.Zero, TimeSpan.FromSeconds(3));
        Assert.DoesNotContain("Exception", desk.Messages, StringComparison.Ordinal);
    }

    [Fact(Timeout = Visit.Patience)]
    public async Task TakenPort_IsToldWithAnotherOne()
    {
        var refused = await Assert.ThrowsAsync<InvalidOperationException>(() => RunningDesk.Open(house.Desk.Port));
        Assert.Contains($"{house.Desk.Port}", refused.Message, StringComparison.Ordinal);
        Assert.Contains("--port", refused.Message, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", refused.Message, StringComparison.Ordinal);
    }

    [Fact(Timeout = Visit.Patience)]
    public async Task Browser_IsOpenedOnTheAddress()
    {
        var folder = Directory.CreateTempSubdirectory("opener-").FullName;
        var (opener, opened) = (Path.Join(folder, "xdg-open"), Path.Join(folder, "opened"));
        await File.WriteAllTextAsync(opener, $"#!/bin/sh\necho \"$@\" > {opened}.new\nmv {opened}.new {opened}\n", TestContext.Current.CancellationToken);
        File.SetUnixFileMode(opener, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        await using var desk = await RunningDesk.Open([], null, null, [("PATH", $"{folder}:{Environment.GetEnvironmentVariable("PATH")}")]);
        for (var wait = 0; wait < 100 && !File.Exists(opened); wait++)
        {
            await Task.Delay(50, TestContext.Current.CancellationToken);
        }

        Assert.Equal($"{desk.Address}/\n", await File.ReadAllTextAsync(opened, TestContext.Current.CancellationToken));
        Directory.Delete(folder, recursive: true);
    }

    [Fact(Timeout = Visit.Patience)]
    public async Task NoBrowser_IsNoFault()
    {
        await using var desk = await RunningDesk.Open([], null, null, [("PATH", "/nonexistent")]);
        using var client = new HttpClient();
        Assert.Equal(HttpStatusCode.OK, (await client.GetAsync(desk.Address, TestContext.Current.CancellationToken)).StatusCode);
        Assert.Equal("", desk.Messages);
    }

    [Fact(Timeout = Visit.Patience)]
    public async Task SecondDesk_OnTheSameBook_SaysThatItIsOpen_AndTheFirstGoesOn()
    {
        var refused = await Assert.ThrowsAsync<InvalidOperationException>(() => RunningDesk.Open(folder: house.Desk.Folder));
        Assert.Contains("is open in another program", refused.Message, StringComparison.Ordinal);
        using var client = new HttpClient();
        Assert.Equal(HttpStatusCode.OK, (await client.GetAsync(house.Desk.Address, TestContext.Current.CancellationToken)).StatusCode);
    }

    [Fact(Timeout = Visit.Patience)]
    public async Task OtherAddressesOfThisMachine_AreNotAnswered()
    {
        foreach (var address in Dns.GetHostAddresses(Dns.GetHostName()).Append(IPAddress.IPv6Loopback).Where(address => !IPAddress.Loopback.Equals(address)))
        {
            using var socket = new Socket(address.AddressFamily, SocketType.Stream, ProtocolType.Tcp);
            await Assert.ThrowsAsync<SocketException>(async () => await socket.ConnectAsync(address, house.Desk.Port, TestContext.Current.CancellationToken));
        }
    }

    /// <summary>Addresses on which a program listens, as the system tells them.</summary>
    private static List<string> Listening(int process)
    {
        var sockets = Directory.EnumerateFiles($"/proc/{process}/fd")
            .Select(file => new FileInfo(file).LinkTarget ?? "")
            .Where(target => target.StartsWith("socket:[", StringComparison.Ordinal))
            .Select(target => target[8..^1])
            .ToHashSet();
        return
        [
            .. from table in new[] { "tcp", "tcp6" }
               from line in File.ReadLines($"/proc/{process}/net/{table}").Skip(1)
               let words = line.Split(' ', StringSplitOptions.RemoveEmptyEntries)
               where words[3] == "0A" && sockets.Contains(words[9])
               let address = words[1].Split(':')
               select $"{Named(address[0])}:{int.Parse(address[1], NumberStyles.HexNumber, CultureInfo.InvariantCulture)}",
        ];
    }

    /// <summary>An address as the system writes it: the bytes of the number, last one first.</summary>
    private static string Named(string digits) => digits.Length == 8 ? new IPAddress(Convert.FromHexString(digits).AsEnumerable().Reverse().ToArray()).ToString() : digits;
}
