/// <summary>
/// Runs inside the program that is measured, before it starts (the runtime calls it by this name): whenever a file is laid beside it, tells the bytes that
/// are alive after a full collection.
/// </summary>
internal static class StartupHook
{
    public const string Variable = "DOUGHWRIGHT_BENCH_ASK";

    public static void Initialize()
    {
        if (Environment.GetEnvironmentVariable(Variable) is { Length: > 0 } ask)
        {
            new Thread(() => Answer(ask)) { IsBackground = true }.Start();
        }
    }

    private static void Answer(string ask)
    {
        while (true)
        {
            if (File.Exists(ask))
            {
                // Twice, so that what only a finalizer held is gone too.
                GC.GetTotalMemory(forceFullCollection: true);
                GC.WaitForPendingFinalizers();
                var alive = GC.GetTotalMemory(forceFullCollection: true);
                File.WriteAllText(ask + ".unfinished", alive.ToString(System.Globalization.CultureInfo.InvariantCulture));
                File.Move(ask + ".unfinished", ask + ".told", overwrite: true);
                File.Delete(ask);
            }

            Thread.Sleep(50);
        }
    }
}
