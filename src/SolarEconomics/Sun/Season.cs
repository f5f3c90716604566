namespace SolarEconomics;

/// <summary>The four turning points of the sun's year, named by month so that they hold on both halves of the earth.</summary>
public enum Season
{
    /// <summary>The sun crosses the equator northwards.</summary>
    MarchEquinox,

    /// <summary>The sun stands furthest north.</summary>
    JuneSolstice,

    /// <summary>The sun crosses the equator southwards.</summary>
    SeptemberEquinox,

    /// <summary>The sun stands furthest south.</summary>
    DecemberSolstice,
}
