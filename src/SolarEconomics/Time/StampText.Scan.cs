namespace SolarEconomics;

internal static partial class StampText
{
    /// <summary>A place in a text that moves on as its parts are read. A copy of it remembers the place.</summary>
    private ref struct Scan(ReadOnlySpan<char> text)
    {
        private readonly ReadOnlySpan<char> _text = text;
        private int _at;

        internal readonly bool AtEnd => _at >= _text.Length;

        internal readonly bool AtDigit => _at < _text.Length && char.IsAsciiDigit(_text[_at]);

        internal readonly bool Peek(char c) => _at < _text.Length && _text[_at] == c;

        internal bool Take(char c)
        {
            if (!Peek(c)) return false;
            _at++;
            return true;
        }

        internal bool TakeDigits(int most, out int value, out int length)
        {
            value = 0;
            length = 0;
            while (length < most && AtDigit)
            {
                value = (value * 10) + (_text[_at++] - '0');
                length++;
            }
            return length > 0;
        }

        internal bool TakeFraction(out int milliseconds)
        {
            milliseconds = 0;
            var length = 0;
            while (AtDigit)
            {
                if (length < 3) milliseconds = (milliseconds * 10) + (_text[_at] - '0');
                length++;
                _at++;
            }
            for (var i = length; i < 3; i++) milliseconds *= 10;
            return length is > 0 and <= 9;
        }

        internal bool TakeWord(out ReadOnlySpan<char> word)
        {
            var start = _at;
            while (_at < _text.Length && char.IsLetter(_text[_at])) _at++;
            word = _text[start.._at];
            return !word.IsEmpty;
        }

        internal bool TakeAnyOf(ReadOnlySpan<char> marks)
        {
            var start = _at;
            while (_at < _text.Length && marks.Contains(_text[_at])) _at++;
            return _at > start;
        }

        internal bool TakeDateMark(out char mark)
        {
            mark = AtEnd ? '\0' : _text[_at];
            if (mark is not ('-' or '/' or '.' or ' ')) return false;
            _at++;
            return true;
        }

        /// <summary>The W of 2024-W05 and 2024W05.</summary>
        internal bool TakeWeekMark()
        {
            var saved = _at;
            Take('-');
            if (Take('W')) return true;
            _at = saved;
            return false;
        }

        internal bool TakeDateTimeGap()
        {
            if (Take('T') || Take('t') || Take('_') || Take(':')) return true;
            Take(',');
            var any = false;
            while (Take(' ')) any = true;
            return any;
        }

        /// <summary>The mark between hour and minute: 09:30, 09.30, 09h30.</summary>
        internal bool TakeTimeMark(out char mark)
        {
            mark = AtEnd ? '\0' : _text[_at];
            if (mark is not (':' or '.' or 'h')) return false;
            _at++;
            return true;
        }

        internal bool TakeHalfOfDay(ref int hour)
        {
            var saved = _at;
            while (Take(' ')) { }
            var rest = _text[_at..];
            var am = rest.StartsWith("am", StringComparison.OrdinalIgnoreCase) || rest.StartsWith("a.m.", StringComparison.OrdinalIgnoreCase);
            var pm = rest.StartsWith("pm", StringComparison.OrdinalIgnoreCase) || rest.StartsWith("p.m.", StringComparison.OrdinalIgnoreCase);
            if (!am && !pm)
            {
                _at = saved;
                return true;
            }
            _at += rest[1] == '.' ? 4 : 2;
            if (hour is < 1 or > 12) return false;
            hour = (hour % 12) + (pm ? 12 : 0);
            return true;
        }

        /// <summary>The name of a clock that means one offset all over the world. Names with several meanings (EST, IST) are none.</summary>
        internal bool TakeClockName(out int minutes)
        {
            var saved = _at;
            minutes = 0;
            if (TakeWord(out var word))
                foreach (var (name, offset) in ClockNames)
                {
                    if (!word.Equals(name, StringComparison.OrdinalIgnoreCase)) continue;
                    minutes = offset;
                    return true;
                }
            _at = saved;
            return false;
        }

        /// <summary>A zone in brackets may stand after an offset, which says it all.</summary>
        internal bool TakeZoneInBrackets()
        {
            if (!Take('[')) return true;
            var end = _text[_at..].IndexOf(']');
            if (end < 1) return false;
            _at += end + 1;
            return true;
        }
    }
}
