using System.Numerics;
using System.Runtime.CompilerServices;
using NodaTime;

namespace SolarEconomics;

/// <summary>The sun's direction at the middle of every step of a grid, in blocks.</summary>
/// <remarks>
/// Among the stars the sun moves a degree a day, so its place there is worked out in full once per <see cref="StepsPerNode"/> steps and joined by cubics
/// (through four places at most 8 h apart the error is below 3e-11); the turning of the earth, which is quick, is exact at every step.
/// Parallax (9″) is left out. Steps longer than an hour take the full series at every step.
/// One track serves one run: it remembers the last places, so it is not safe to share between threads.
/// </remarks>
internal sealed class SunTrack
{
    private const int LeastStepsPerNode = 8;
    private static readonly Duration NodeSpacing = Duration.FromHours(6);

    private readonly IntervalGrid _grid;
    private readonly double _latitudeDeg;
    private readonly double _longitudeDeg;
    private readonly double _sinLatitude;
    private readonly double _cosLatitude;
    private readonly Place[] _places = new Place[4];
    private int _placesAt = int.MinValue;

    internal SunTrack(double latitudeDeg, double longitudeDeg, IntervalGrid grid)
    {
        _grid = grid;
        (_latitudeDeg, _longitudeDeg) = (latitudeDeg, longitudeDeg);
        (_sinLatitude, _cosLatitude) = Math.SinCos(latitudeDeg * SolarCoordinates.DegToRad);
        // A power of two divides the block, so that nodes follow each other from block to block.
        while (StepsPerNode < StepBlock.Size && grid.Step * (2 * StepsPerNode) <= NodeSpacing) StepsPerNode *= 2;
    }

    internal int StepsPerNode { get; } = LeastStepsPerNode;

    internal void Fill(int first, StepBlock block)
    {
        if (_grid.Step > Duration.FromHours(1))
        {
            FillInFull(first, block);
            return;
        }
        for (var at = 0; at < StepBlock.Size; at += StepsPerNode) FillNode(first + at, block, at);
    }

    private Instant MiddleOf(int step) => _grid.StartOf(step) + (_grid.Step / 2);

    private void FillInFull(int first, StepBlock block)
    {
        for (var i = 0; i < StepBlock.Size; i++)
        {
            var sun = SolarCoordinates.At(MiddleOf(first + i));
            var direction = sun.DirectionFrom(_latitudeDeg, _longitudeDeg);
            (block.East[i], block.North[i], block.Up[i]) = (direction.East, direction.North, direction.Up);
            block.ExtraterrestrialWm2[i] = sun.ExtraterrestrialNormalWm2;
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void FillNode(int step, StepBlock block, int at)
    {
        var places = PlacesAround(step);
        var x = new Cubic(places[0].X, places[1].X, places[2].X, places[3].X);
        var y = new Cubic(places[0].Y, places[1].Y, places[2].Y, places[3].Y);
        var z = new Cubic(places[0].Z, places[1].Z, places[2].Z, places[3].Z);
        var light = new Cubic(places[0].Light, places[1].Light, places[2].Light, places[3].Light);
        var turn = new Cubic(places[0].SiderealDeg, places[1].SiderealDeg, places[2].SiderealDeg, places[3].SiderealDeg, wrap: 360, perNode: TurnPerNode());
        var lanes = Vector<double>.Count;
        for (var i = 0; i < StepsPerNode; i += lanes)
        {
            var u = (Vector.CreateSequence((double)i, 1.0)) / StepsPerNode;
            var angle = (turn.At(u) + new Vector<double>(_longitudeDeg)) * SolarCoordinates.DegToRad;
            var (sin, cos) = Vector.SinCos(angle);
            var (vx, vy, vz) = (x.At(u), y.At(u), z.At(u));
            var towardsMeridian = (vx * cos) + (vy * sin); // cos δ cos ω
            var west = (vx * sin) - (vy * cos);            // cos δ sin ω
            (-west).CopyTo(block.East, at + i);
            ((vz * _cosLatitude) - (towardsMeridian * _sinLatitude)).CopyTo(block.North, at + i);
            ((vz * _sinLatitude) + (towardsMeridian * _cosLatitude)).CopyTo(block.Up, at + i);
            light.At(u).CopyTo(block.ExtraterrestrialWm2, at + i);
        }
    }

    /// <summary>The places one node before, at, one and two nodes after a step; three of them are known from the node before.</summary>
    private Place[] PlacesAround(int step)
    {
        var follows = step - StepsPerNode == _placesAt;
        if (follows) Array.Copy(_places, 1, _places, 0, 3);
        for (var n = follows ? 3 : 0; n < 4; n++) _places[n] = Place.At(MiddleOf(step + ((n - 1) * StepsPerNode)));
        _placesAt = step;
        return _places;
    }

    private double TurnPerNode() => 360.98564736629 / 24 * _grid.StepHours * StepsPerNode;

    /// <summary>The sun among the stars as a unit vector on the equator's axes, its light above the air, and how far the earth has turned.</summary>
    private readonly record struct Place(double X, double Y, double Z, double Light, double SiderealDeg)
    {
        internal static Place At(Instant instant)
        {
            var sun = SolarCoordinates.At(instant);
            var (sinLongitude, cosLongitude) = Math.SinCos(sun.ApparentLongitudeDeg * SolarCoordinates.DegToRad);
            var (sinTilt, cosTilt) = Math.SinCos(sun.ObliquityDeg * SolarCoordinates.DegToRad);
            return new Place(cosLongitude, cosTilt * sinLongitude, sinTilt * sinLongitude, sun.ExtraterrestrialNormalWm2, sun.SiderealTimeDeg);
        }
    }

    /// <summary>The cubic through four values at −1, 0, 1 and 2, in powers of the distance from the second.</summary>
    private readonly struct Cubic
    {
        private readonly double _c0, _c1, _c2, _c3;

        internal Cubic(double before, double from, double to, double after)
        {
            _c0 = from;
            _c1 = (to - (before / 3)) - (from / 2) - (after / 6);
            _c2 = ((before + to) / 2) - from;
            _c3 = ((after - before) / 6) + ((from - to) / 2);
        }

        /// <summary>For an angle that wraps and turns evenly but for a small rest: the even part is put aside so that it loses no digits.</summary>
        internal Cubic(double before, double from, double to, double after, double wrap, double perNode)
        {
            double Rest(double value, int nodes) => Math.IEEERemainder(value - from - (perNode * nodes), wrap);
            var rest = new Cubic(Rest(before, -1), 0, Rest(to, 1), Rest(after, 2));
            (_c0, _c1, _c2, _c3) = (from, rest._c1 + perNode, rest._c2, rest._c3);
        }

        internal Vector<double> At(Vector<double> u) =>
            ((((new Vector<double>(_c3) * u) + new Vector<double>(_c2)) * u) + new Vector<double>(_c1)) * u + new Vector<double>(_c0);
    }
}
