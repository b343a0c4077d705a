using System.Security.Cryptography;
using Doughwright.App.Commands;

namespace Doughwright.App.Desk.TheBook;

/// <summary>
/// What was refused where the desk gives a file and no page: the page that it leads back to tells it. By a key that cannot be guessed, so an address from elsewhere
/// says nothing that did not happen.
/// </summary>
internal sealed class LastRefusals
{
    private const int Most = 16;
    private const int KeyLength = 16;

    private readonly Lock turn = new();
    private readonly Queue<(string Key, IReadOnlyList<Fault> Faults)> told = [];

    /// <returns>The key that it is told by.</returns>
    public string Add(IReadOnlyList<Fault> faults)
    {
        var key = RandomNumberGenerator.GetHexString(KeyLength, lowercase: true);
        lock (turn)
        {
            told.Enqueue((key, faults));
            while (told.Count > Most)
            {
                told.Dequeue();
            }
        }

        return key;
    }

    /// <summary>Nothing for a key that is none, or too long ago.</summary>
    public IReadOnlyList<Fault> Of(string? key)
    {
        lock (turn)
        {
            return told.FirstOrDefault(one => one.Key == key).Faults ?? [];
        }
    }
}
