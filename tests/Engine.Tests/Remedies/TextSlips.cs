using Doughwright.Engine.Tests.TextForm;

namespace Doughwright.Engine.Tests.Remedies;

/// <summary>Slips of the pen in the potato rolls, each with the kind of finding it gives.</summary>
internal static class TextSlips
{
    public static IReadOnlyList<(string Kind, string Text)> All { get; } =
    [
        ("decimal-comma", With("    salt: 7 g", "    salt: 7,5 g")),
        ("unit-unknown", With("    salt: 7 g", "    salt: 7 gr")),
        ("leading-zero", With("    salt: 7 g", "    salt: 07 g")),
        ("unknown-word", With("    cover: cloth", "    cover: cloht")),
        ("unknown-key", With("  altitude: 5 m", "  altitud: 5 m")),
        ("unknown-kind", With("    kind: puree", "    kind: pure")),
        ("step-of-unknown-part", With("    of: wash", "    of: wahs")),
        ("order-unknown-line", With("salt, butter, strong", "salt, buter, strong")),
        ("nearly-known-word", With("100 g, boiling", "100 g, boilin")),
        ("negative-quantity", With("    salt: 7 g", "    salt: -7 g")),
        ("clock-time", With("    hands: 12 min", "    hands: 0:12")),
        ("fraction", With("    salt: 7 g", "    salt: 1/4 oz")),
        ("measure-not-clear", With("    sugar: 30 g", "    sugar: 1/4 cup")),
        ("more-than-a-quantity", With("50 g, soft", "50 g soft")),
        ("warmth-twice", With("100 g, boiling", "100 g, boiling, from the tap")),
        ("tab", With("  altitude: 5 m", "\taltitude: 5 m")),
        ("indentation", With("    sugar: 30 g", "   sugar: 30 g")),
        ("space-after-colon", With("  air: 21 C", "  air:21 C")),
        ("direction-mark", With("title: Potato rolls", "title: Potato \u202erolls")),
        ("control-character", With("title: Potato rolls", "title: Potato \u0007rolls")),
        ("folded-block", With("    words: Mash it", "    words: >\n      Mash it")),
        ("colon-in-words", With("title: Potato rolls", "title: Potato: rolls")),
        ("first-mark", With("title: Potato rolls", "title: %Potato rolls")),
        ("quote-open", With("title: Potato rolls", "title: \"Potato rolls")),
        ("kind-missing", With("  brush:\n    name: Brush with milk\n    kind: glaze", "  brush:\n    name: Brush with milk")),
        ("form-missing", With("doughwright: 1\n", "")),
        ("air-outside-limits", With("  air: 21 C", "  air: 70 C")),
        ("oven-outside-limits", With("170 C fan", "340 C fan")),
        ("fridge-outside-limits", With("  fridge: 5 C", "  fridge: 41 C")),
        ("altitude-outside-limits", With("  altitude: 5 m", "  altitude: 9,000 m")),
        ("order-leaves-out", With("sugar, instant yeast, salt, butter, strong white flour", "sugar, instant yeast, butter, strong white flour")),
    ];

    private static string With(string piece, string instead) => Texts.PotatoRollsWith(piece, instead);
}
