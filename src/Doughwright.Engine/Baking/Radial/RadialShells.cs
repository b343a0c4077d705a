using Doughwright.Engine.Numerics;

namespace Doughwright.Engine.Baking.Radial;

/// <summary>The shells of a pack of lanes from the core outwards: all that a bake keeps of a piece from step to step.</summary>
internal sealed class RadialShells<T>(RadialGrid grid) where T : struct, ILane<T>
{
    private readonly RadialShell<T>[] shells = new RadialShell<T>[grid.Cells];

    public RadialGrid Grid => grid;

    public Span<RadialShell<T>> All => shells;

    public ref readonly RadialShell<T> Outermost => ref shells[^1];

    /// <summary>In the middle, °C.</summary>
    public T Core => shells[0].Celsius - (T.Of(grid.CoreWeight) * (shells[1].Celsius - shells[0].Celsius));

    /// <summary>Over the volume, °C.</summary>
    public T Mean
    {
        get
        {
            var sum = T.Of(0);
            for (var cell = 0; cell < shells.Length; cell++)
            {
                sum += T.Of(grid.Share[cell]) * shells[cell].Celsius;
            }

            return sum;
        }
    }

    /// <summary>Water, kg per kg of dry matter.</summary>
    public T Water
    {
        get
        {
            var sum = T.Of(0);
            for (var cell = 0; cell < shells.Length; cell++)
            {
                sum += T.Of(grid.Share[cell]) * shells[cell].Water;
            }

            return sum;
        }
    }

    /// <summary>Heat, with that of the vapour that dried away, J per kg of dry matter.</summary>
    public T Heat
    {
        get
        {
            var sum = T.Of(0);
            for (var cell = 0; cell < shells.Length; cell++)
            {
                sum += T.Of(grid.Share[cell]) * shells[cell].Total;
            }

            return sum;
        }
    }

    /// <param name="content">Heat content, J per kg of dry matter.</param>
    public void Begin(in RadialSize<T> size, T enters, T content)
    {
        for (var cell = 0; cell < shells.Length; cell++)
        {
            var thick = T.Of(grid.Depth[cell]) * size.Reach;
            shells[cell] = new()
            {
                Content = content,
                Before = content,
                Total = content,
                TotalBefore = content,
                Held = size.Water,
                Water = size.Water,
                Celsius = enters,
                Outer = T.Of(grid.Outer[cell]) * size.Reach,
                Inner = (T.Of(grid.Outer[cell]) * size.Reach) + thick,
                PerThick = T.Of(1) / thick,
            };
        }
    }
}
