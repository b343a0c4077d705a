namespace Doughwright.Engine.Rehearsals.Warming;

/// <summary>What a dough stands in or on while it rises, which decides where there is room for it.</summary>
internal enum PlaceHolder
{
    Bowl,
    Tin,
    Tray,
}
