using System.Diagnostics;
using System.Globalization;
using System.Text;
using Doughwright.Engine.Numerics;

namespace Doughwright.Bench;

/// <summary>One bake solved by the lane kernel and by CVODE in the same run, on the same kitchens: ratios, not times, are what counts.</summary>
internal static class BakeAgainstCvode
{
    private const int Kitchens = 2048;
    private const int ForCvode = 256;
    private const double Allowed = 0.05;

    /// <summary>Steps of ours: the fewest that keep every core within 0.05 K with room to spare, far from where one Newton step fails.</summary>
    private const int Steps = 60;

    public static int Run()
    {
        var kitchens = LatentKitchens.Draw(Kitchens);
        var ball = new LatentBall(Steps);
        var reference = new LatentBall(4000).Bake(kitchens.First(ForCvode), Lanes.Widest);
        var plain = ball.Bake(kitchens, 1);
        var off = Worst(plain, Kitchens, reference);
        var alike = new[] { 2, 4, 8 }.All(width => ball.Bake(kitchens, width).AsSpan().SequenceEqual(plain));
        Console.WriteLine($"cores at the end {plain[^Kitchens..].Min():F1} to {plain[^Kitchens..].Max():F1} °C; {Steps} steps: worst core {off:F4} K off; same digits at 1, 2, 4 and 8 lanes: {(alike ? "yes" : "no")}");
        var one = Seconds(() => ball.Bake(kitchens.First(ForCvode), 1)) / ForCvode;
        var many = Seconds(() => ball.Bake(kitchens, Lanes.Widest)) / Kitchens;
        Tell("plain doubles", one, null);
        Tell($"{Lanes.Widest} lanes", many, null);
        if (!alike || !(off < Allowed))
        {
            Console.WriteLine("This is not the bake that was asked for: no ratio.");
            return 1;
        }

        if (Build() is not { } program)
        {
            return 2;
        }

        var exact = Cvode(program, kitchens, "1e-10 1e-9 0");
        Console.WriteLine($"our finest run and CVODE at 1e-10 differ by {Worst(exact.Cores, ForCvode, reference):F5} K at most");
        var best = double.PositiveInfinity;
        foreach (var tolerances in (string[])["3e-4 3e-4 1", "2e-4 2e-4 1", "1e-4 1e-4 1", "1e-4 1e-3 1", "5e-5 5e-5 1", "1e-5 1e-5 0"])
        {
            var peer = Cvode(program, kitchens, tolerances);
            var error = Worst(peer.Cores, ForCvode, reference);
            Console.WriteLine($"CVODE {tolerances,-12} {1e6 * peer.Seconds / ForCvode,8:F1} µs a bake, worst core {error:F4} K off");
            best = error < Allowed ? Math.Min(best, peer.Seconds / ForCvode) : best;
        }

        Console.WriteLine("CVODE at the quickest of these that keeps every core within 0.05 K:");
        Tell("plain doubles", one, best);
        Tell($"{Lanes.Widest} lanes", many, best);
        return 0;
    }

    private static void Tell(string what, double seconds, double? peer) =>
        Console.WriteLine(peer is { } slower ? $"{what,-14} {slower / seconds:F1} times as quick" : $"{what,-14} {1e6 * seconds:F2} µs a bake");

    private static double Worst(double[] cores, int count, double[] reference)
    {
        var worst = 0.0;
        for (var mark = 0; mark < LatentBall.Marks; mark++)
        {
            for (var kitchen = 0; kitchen < ForCvode; kitchen++)
            {
                worst = Math.Max(worst, Math.Abs(cores[(mark * count) + kitchen] - reference[(mark * ForCvode) + kitchen]));
            }
        }

        return worst;
    }

    /// <summary>The best of many passes: others use the machine too.</summary>
    private static double Seconds(Action pass)
    {
        var best = double.PositiveInfinity;
        for (var watch = Stopwatch.StartNew(); watch.Elapsed.TotalSeconds < 3;)
        {
            var start = Stopwatch.GetTimestamp();
            pass();
            best = Math.Min(best, Stopwatch.GetElapsedTime(start).TotalSeconds);
        }

        return best;
    }

    /// <summary>Builds the peer where its library and a C compiler are; says what is missing where they are not.</summary>
    private static string? Build()
    {
        var folder = Directory.CreateTempSubdirectory("doughwright-cvode").FullName;
        var (source, program) = (Path.Combine(folder, "bake.c"), Path.Combine(folder, "bake"));
        using (var stream = typeof(BakeAgainstCvode).Assembly.GetManifestResourceStream("cvode-bake.c")!)
        using (var file = File.Create(source))
        {
            stream.CopyTo(file);
        }

        string[] arguments =
        [
            "-O3", "-march=native", "-o", program, source, "-lsundials_cvode", "-lsundials_nvecserial", "-lsundials_sunlinsolband", "-lsundials_sunmatrixband", "-lm",
        ];
        try
        {
            using var compiler = Process.Start(new ProcessStartInfo("gcc", arguments) { RedirectStandardError = true })!;
            var said = compiler.StandardError.ReadToEnd();
            compiler.WaitForExit();
            if (compiler.ExitCode == 0)
            {
                return program;
            }

            Console.Error.WriteLine(said);
        }
        catch (System.ComponentModel.Win32Exception)
        {
            Console.Error.WriteLine("gcc was not found.");
        }

        Console.Error.WriteLine("CVODE is missing, so there is no ratio. On Debian: apt-get install -y libsundials-dev gcc");
        return null;
    }

    private static (double[] Cores, double Seconds) Cvode(string program, LatentKitchens kitchens, string arguments)
    {
        using var peer = Process.Start(new ProcessStartInfo(program, arguments.Split(' ')) { RedirectStandardInput = true, RedirectStandardOutput = true })!;
        var text = new StringBuilder();
        for (var kitchen = 0; kitchen < ForCvode; kitchen++)
        {
            text.AppendLine(FormattableString.Invariant(
                $"{kitchens.Start[kitchen]:R} {kitchens.Oven[kitchen]:R} {kitchens.Transfer[kitchen]:R} {kitchens.Latent[kitchen]:R} {kitchens.Fourier[kitchen]:R}"));
        }

        peer.StandardInput.Write(text);
        peer.StandardInput.Close();
        var lines = peer.StandardOutput.ReadToEnd().Split('\n');
        peer.WaitForExit();
        var cores = new double[LatentBall.Marks * ForCvode];
        for (var kitchen = 0; kitchen < ForCvode; kitchen++)
        {
            var marks = lines[kitchen].Split(' ');
            for (var mark = 0; mark < LatentBall.Marks; mark++)
            {
                cores[(mark * ForCvode) + kitchen] = double.Parse(marks[mark], CultureInfo.InvariantCulture);
            }
        }

        return (cores, double.Parse(lines[ForCvode].Split(' ')[1], CultureInfo.InvariantCulture));
    }
}
