using System.Runtime.CompilerServices;

namespace Doughwright.App.Tests;

/// <summary>The book of whoever runs the tests is none of theirs: what a command reads without being told where lies in a folder that is not there.</summary>
internal static class NoBookOfTheUsers
{
    [ModuleInitializer]
    internal static void Move() => Environment.SetEnvironmentVariable("XDG_DATA_HOME", Path.Join(AppContext.BaseDirectory, "no-data-of-the-user"));
}
