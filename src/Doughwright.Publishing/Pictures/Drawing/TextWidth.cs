using System.Text;

namespace Doughwright.Publishing.Pictures.Drawing;

/// <summary>
/// How wide a text comes out, so that no label is laid over another. Sums of the measured advances of the two faces; kerning only draws letters
/// together, so the sum is never too small by more than a hair.
/// </summary>
internal static class TextWidth
{
    private const char First = ' ';
    private const char Last = '~';

    /// <summary>A letter that the faces do not have comes from another face and may be as wide as it is high.</summary>
    private const int Unknown = 1000;

    /// <summary>Letters beyond ASCII that are no letter with an accent.</summary>
    private const string Others = "°×±−–—…‘’“”½¼¾·ßæøÆØþð";

    /// <summary>Width in the units of the picture.</summary>
    /// <param name="size">Size of type, in the same units.</param>
    public static double Of(string text, double size, Face face)
    {
        var thousandths = 0;
        foreach (var rune in text.Normalize(NormalizationForm.FormD).EnumerateRunes())
        {
            thousandths += Advance(rune, face);
        }

        return thousandths * size / 1000;
    }

    private static int Advance(Rune rune, Face face)
    {
        if (Rune.GetUnicodeCategory(rune) is System.Globalization.UnicodeCategory.NonSpacingMark)
        {
            return 0;
        }

        var letter = rune.Value == '\u00a0' ? First : rune.Value;
        var advances = Of(face);
        return letter is >= First and <= Last ? advances.Plain[letter - First]
            : rune.IsBmp && Others.IndexOf((char)letter) is var at and >= 0 ? advances.Beyond[at]
            : Unknown;
    }

    private static Advances Of(Face face) => face switch
    {
        Face.LabelBold => LabelBold,
        Face.Cue => Cue,
        Face.Figures => Figures,
        _ => Label,
    };

    /// <summary>How far each letter of a face moves the next, in thousandths of the size of type.</summary>
    /// <param name="Plain">From the space to the tilde.</param>
    /// <param name="Beyond">In the order of <see cref="Others"/>.</param>
    private sealed record Advances(short[] Plain, short[] Beyond);

    private static readonly Advances Label = new(
        [203, 223, 321, 566, 596, 890, 629, 177, 258, 258, 400, 572, 226, 462, 224, 353, 551, 435, 511,
         521, 517, 498, 540, 499, 546, 550, 223, 228, 572, 572, 572, 447, 937, 534, 547, 601, 608, 509,
         483, 620, 627, 241, 248, 564, 454, 731, 628, 610, 520, 610, 573, 536, 510, 612, 555, 807, 524,
         510, 516, 257, 353, 257, 480, 497, 209, 470, 510, 490, 514, 493, 349, 490, 528, 223, 222, 468,
         222, 800, 528, 508, 510, 514, 343, 440, 370, 515, 472, 682, 456, 471, 441, 256, 243, 256, 572],
        [371, 572, 572, 572, 699, 831, 661, 224, 226, 380, 382, 896, 853, 845, 234, 515, 740, 508, 792, 610, 510, 505]);

    private static readonly Advances LabelBold = new(
        [196, 246, 365, 580, 599, 897, 638, 196, 266, 265, 398, 572, 256, 461, 253, 375, 565, 458, 523,
         535, 544, 517, 557, 518, 560, 565, 248, 259, 572, 572, 572, 466, 937, 559, 561, 612, 617, 516,
         494, 628, 635, 254, 261, 584, 465, 748, 636, 620, 534, 620, 583, 542, 520, 620, 577, 830, 549,
         536, 528, 266, 375, 266, 497, 507, 233, 481, 515, 500, 519, 505, 363, 495, 532, 233, 233, 491,
         233, 799, 532, 516, 515, 519, 352, 449, 380, 520, 489, 705, 481, 486, 451, 278, 248, 278, 572],
        [373, 572, 572, 572, 700, 833, 738, 254, 256, 440, 442, 998, 959, 948, 264, 537, 753, 516, 806, 620, 515, 510]);

    private static readonly Advances Cue = new(
        [230, 191, 351, 676, 606, 852, 594, 201, 312, 313, 487, 510, 196, 381, 191, 281, 585, 500, 536,
         550, 641, 571, 570, 560, 553, 572, 191, 197, 510, 510, 510, 451, 929, 700, 681, 688, 753, 650,
         581, 728, 780, 380, 442, 705, 598, 910, 755, 744, 632, 744, 698, 606, 610, 730, 684, 983, 668,
         641, 582, 311, 392, 311, 535, 400, 105, 575, 536, 451, 575, 457, 283, 535, 575, 299, 260, 523,
         300, 833, 575, 517, 556, 535, 395, 441, 335, 562, 513, 748, 490, 522, 443, 310, 246, 311, 510],
        [381, 470, 510, 510, 500, 800, 581, 196, 196, 356, 356, 828, 803, 835, 190, 600, 792, 517, 903, 744, 536, 516]);

    private static readonly Advances Figures = new(
        [216, 208, 379, 714, 605, 870, 754, 210, 303, 303, 486, 510, 213, 389, 208, 392, 608, 500, 586,
         578, 636, 584, 590, 556, 564, 590, 208, 213, 501, 510, 501, 468, 939, 709, 686, 685, 753, 624,
         572, 737, 773, 384, 437, 719, 597, 913, 742, 749, 619, 749, 709, 605, 632, 722, 689, 992, 672,
         654, 587, 301, 392, 301, 517, 409, 143, 546, 606, 510, 620, 531, 349, 555, 638, 323, 310, 598,
         312, 947, 644, 569, 616, 609, 478, 472, 382, 611, 527, 786, 560, 525, 508, 310, 245, 310, 510],
        [362, 470, 510, 510, 501, 800, 631, 213, 213, 392, 392, 807, 797, 850, 208, 637, 813, 569, 912, 749, 606, 569]);
}
