namespace Doughwright.Browser.Tests.Running;

/// <summary>Measurements: nothing else runs beside them.</summary>
[CollectionDefinition(nameof(Alone), DisableParallelization = true)]
public sealed class Alone;
