namespace Doughwright.Publishing.Pictures.Photos;

/// <summary>What came of looking at a file as a photo.</summary>
/// <param name="Fault">Null for a whole photo.</param>
/// <param name="Width">Pixels that its head says; 0 where none was read.</param>
internal readonly record struct PhotoLooked(PhotoFault? Fault, int Width = 0, int Height = 0);
