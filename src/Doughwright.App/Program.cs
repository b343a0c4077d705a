using System.Text;
using Doughwright.App;
using Doughwright.App.Desk;

// The console's own writers follow the terminal's character set; a recipe is UTF-8 wherever it goes.
var utf8 = new UTF8Encoding(false);
using var output = new StreamWriter(Console.OpenStandardOutput(), utf8, 16384);
using var messages = new StreamWriter(Console.OpenStandardError(), utf8, 1024);
using var input = Console.OpenStandardInput();
return Cli.Run(args, input, output, messages, openDesk: (desk, voice) => DeskCommand.Run(desk, output, messages, voice));
