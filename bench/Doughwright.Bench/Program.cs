using BenchmarkDotNet.Columns;
using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Diagnosers;
using BenchmarkDotNet.Exporters;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Loggers;
using BenchmarkDotNet.Running;
using BenchmarkDotNet.Toolchains.InProcess.Emit;
using Doughwright.Bench;
using Perfolizer.Horology;

if (args is ["desk-start"])
{
    return await DeskStart.Run();
}

if (args is ["larder-hits"])
{
    return LarderProbe.TellHits();
}

if (args is ["desk-shelf"])
{
    return await DeskShelf.Run();
}

if (args is ["bake"])
{
    return BakeAgainstCvode.Run();
}

if (args is ["bake-share"])
{
    return BakeShare.Tell();
}

if (args is ["demos", ..])
{
    return DemoSpeed.Tell(args is [_, var one] ? one : "*");
}

if (args is ["book"])
{
    return BookSpeed.Run();
}

if (args is ["editing", ..])
{
    return await EditingSession.Run(args is [_, var minutes] ? int.Parse(minutes, System.Globalization.CultureInfo.InvariantCulture) : 10);
}

if (args is ["section"])
{
    return SectionSpeed.Tell();
}

// In this process and short: nothing is generated, restored or built, so it works without a network and ends within a minute or two.
var job = Job.Default
    .WithToolchain(InProcessEmitToolchain.Instance)
    .WithLaunchCount(1)
    .WithWarmupCount(5)
    .WithIterationCount(9)
    .WithIterationTime(TimeInterval.FromMilliseconds(120));

var config = ManualConfig.CreateEmpty()
    .AddJob(job)
    .AddLogger(NullLogger.Instance)
    .AddColumn(TargetMethodColumn.Method, StatisticColumn.Median, StatisticColumn.StdDev, BaselineRatioColumn.RatioMean)
    .AddColumnProvider(DefaultColumnProviders.Params, DefaultColumnProviders.Metrics)
    .AddDiagnoser(new MemoryDiagnoser(new MemoryDiagnoserConfig(displayGenColumns: false)))
    .WithOptions(ConfigOptions.DisableLogFile);

var summaries = BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args.Length == 0 ? ["--filter", "*"] : args, config).ToArray();
foreach (var summary in summaries)
    MarkdownExporter.Console.ExportToLog(summary, ConsoleLogger.Unicode);
return summaries.Length > 0 && summaries.All(summary => summary.Reports.All(report => report.Success)) ? 0 : 1;
