namespace Doughwright.Publishing.Wording;

/// <summary>Sentences of words that carry arguments.</summary>
internal static class Sentences
{
    private const string Between = ". ";

    /// <summary>The words without each sentence that has an empty text for one of its arguments.</summary>
    public static string WithoutEmpty(string template, Func<string, object?> argument)
    {
        var sentences = template.Split(Between);
        var told = sentences.Where(sentence => !Names(sentence).Any(name => argument(name) is "")).ToArray();
        if (told.Length == sentences.Length)
        {
            return template;
        }

        var words = string.Join(Between, told);
        return words.Length == 0 || words.EndsWith('.') ? words : words + ".";
    }

    private static IEnumerable<string> Names(string sentence)
    {
        for (var open = sentence.IndexOf('{'); open >= 0; open = sentence.IndexOf('{', open + 1))
        {
            if (sentence.IndexOf('}', open) is var close and > 0)
            {
                yield return sentence[(open + 1)..close].Split(':')[0];
            }
        }
    }
}
