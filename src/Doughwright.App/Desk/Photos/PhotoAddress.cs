namespace Doughwright.App.Desk.Photos;

/// <summary>Where a photo of the book is to be had: under digits of its own hash, so that what is there never changes.</summary>
internal static class PhotoAddress
{
    public const string Route = "/photos/{name}";

    public static string Of(string name) => $"/photos/{name}";
}
