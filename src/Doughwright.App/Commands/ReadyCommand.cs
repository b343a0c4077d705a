using Doughwright.App.Json;
using Doughwright.App.Text;
using Doughwright.Engine.Ingredients;
using Doughwright.Engine.Rehearsals.Readying;

namespace Doughwright.App.Commands;

/// <summary>ready FILE --start 22:00 --by 07:00: what to weigh or pour otherwise to be ready at an hour.</summary>
internal static class ReadyCommand
{
    public static Answer Run(CommandRun run)
    {
        var hours = ReadyHours.Read(run.Given, run.Options);
        return AskedRehearsal.Of(run, _ => { }, asked =>
        {
            var answer = Ready.Answer(asked.Recipe, Larder.Shipped, asked.Request, hours!.Wanted);
            return run.Json
                ? ReadyJson.Write(Stamp.Of(asked.Recipe), answer, asked.Findings, run.Voice)
                : ReadyText.Write(answer, hours, asked.Findings, run.Voice);
        });
    }
}
