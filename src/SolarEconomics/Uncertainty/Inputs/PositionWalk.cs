namespace SolarEconomics;

/// <summary>Follows a cash position from day to day and keeps the last day on which it rose to 0 or above.</summary>
internal struct PositionWalk(double day, double position, double lastCrossing)
{
    private double _day = day;
    private bool _isOpen = position < 0;

    internal double Position { get; private set; } = position;

    /// <summary>Days after the first purchase; infinite where it never rose to 0.</summary>
    internal double LastCrossing { get; private set; } = lastCrossing;

    internal void GoTo(double day, double slopePerDay)
    {
        var days = day - _day;
        var after = Position + (slopePerDay * days);
        if (_isOpen && after >= 0)
        {
            LastCrossing = after > Position ? _day + (days * (-Position / (after - Position))) : day;
            _isOpen = false;
        }
        if (after < 0) _isOpen = true;
        (Position, _day) = (after, day);
    }

    internal void Jump(double amount)
    {
        Position += amount;
        if (_isOpen && Position >= 0)
        {
            LastCrossing = _day;
            _isOpen = false;
        }
        if (Position < 0) _isOpen = true;
    }
}
