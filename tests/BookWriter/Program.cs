using System.Globalization;
using Doughwright.BookWriter;

// Works on a book until it is ended by force. What it has been told to be done it says, line by line, at once.
var output = new StreamWriter(Console.OpenStandardOutput()) { AutoFlush = true };
switch (args)
{
    case ["write", var path, var draw]:
        WriteLoad.Run(path, int.Parse(draw, CultureInfo.InvariantCulture), output);
        return 0;
    case ["migrate", var path]:
        Migration.Run(path, output);
        return 0;
    case ["copy", var path, var to]:
        CopyLoad.Run(path, to, output);
        return 0;
    default:
        return 2;
}
