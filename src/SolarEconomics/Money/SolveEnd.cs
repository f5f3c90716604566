namespace SolarEconomics;

/// <summary>How the search for a rate of return ended.</summary>
public enum SolveEnd
{
    /// <summary>Exactly one rate was found.</summary>
    Root,

    /// <summary>All amounts have one sign (or are 0): no rate can exist.</summary>
    NoSignChange,

    /// <summary>The signs change, but the value is 0 at no rate above -100 %.</summary>
    NoRealRoot,

    /// <summary>Several rates fit; none of them ranks the flow.</summary>
    SeveralRoots,

    /// <summary>The search did not settle.</summary>
    NotConverged,
}
