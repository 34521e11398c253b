using System.Globalization;
using System.Text;
using CsCheck;
using Scribeline.Engine.Evidence;
using Scribeline.Store.Logs;

namespace Scribeline.Store.Tests.Logs;

/// <summary>Altimeters' files of every kind: one flight written in many ways reads the same; what cannot be read says why, with its line.</summary>
public class LogFileTests
{
    // A pad, a push of a second, a fall: enough to be read, simple enough to be written in any way.
    private static readonly (double Time, double Pressure, double Acceleration, bool Fired)[] Flight =
        [.. Enumerable.Range(0, 200).Select(i => (i * 0.05, Math.Round(97_772 - (i < 40 ? 0 : 30.25 * (i - 40)), 2), i is > 40 and < 60 ? 85.5 : 9.81, i > 150))];

    [Theory]
    [InlineData("time (s),pressure (Pa),acceleration (m/s2),drogue fired", ',', '.', "\n")]
    [InlineData("Time [s];Baro [Pa];Accel [m/s²];Drogue", ';', ',', "\r\n")]
    [InlineData("t_s\tp_Pa\ta_m/s2\tmain_fired", '\t', ',', "\r")]
    [InlineData("elapsed sec|static pressure Pa|axial acc m/s2|pyro 1", '|', '.', "\n")]
    [InlineData("time_s pressure_Pa accel_mps2 fired", ' ', '.', "\n")]
    [InlineData("", ',', '.', "\n")]
    public void One_flight_in_many_dresses(string header, char sign, char mark, string ends)
    {
        StringBuilder text = new(header.Length > 0 ? header + ends : "");
        foreach (var (time, pressure, acceleration, fired) in Flight)
            text.Append(string.Join(sign, Number(time, mark), Number(pressure, mark), Number(acceleration, mark), fired ? "1" : "0")).Append(ends);
        var reading = LogFile.Read(text.ToString(), header.Length > 0 ? [] : ["time = 1 in s", "pressure = 2 in Pa", "acceleration = 3 in m/s2", "fired = 4"]);
        Same(Record(reading));
    }

    // Any order, other units in a line of their own, a mark at the start, remarks, quotes, columns nobody needs.
    [Fact]
    public void Order_and_units_do_not_matter()
    {
        StringBuilder text = new("\uFEFF# flight 3\n// by hand\n\"Temp\",\"Batt\",\"Acc\",\"Press\",\"Time\",\"Drogue\"\n\"C\",\"mV\",\"g\",\"hPa\",\"ms\",\"\"\n");
        foreach (var (time, pressure, acceleration, fired) in Flight)
            text.Append(CultureInfo.InvariantCulture, $"21.5,7400,{acceleration / 9.80665:R},\"{pressure / 100:R}\",{time * 1000:R},{(fired ? 1 : 0)}\n");
        var record = Record(LogFile.Read(Encoding.UTF8.GetBytes(text.ToString()), []));
        Same(record);
        Assert.Equal(7.4, record.Voltage[0], 1e-9);
    }

    [Fact]
    public void Other_alphabets_of_bytes_read_the_same()
    {
        var text = Plain();
        Same(Record(LogFile.Read([0xFF, 0xFE, .. Encoding.Unicode.GetBytes(text)], [])));
        Same(Record(LogFile.Read([0xFE, 0xFF, .. Encoding.BigEndianUnicode.GetBytes(text)], [])));

        // 0xB0 is a degree sign in Latin letters and no UTF-8.
        Same(Record(LogFile.Read([.. Encoding.Latin1.GetBytes("# 21 \u00B0C\n" + text)], [])));
    }

    [Fact]
    public void The_language_of_the_machine_does_not_matter()
    {
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
            Same(Record(LogFile.Read(Plain(), [])));
        }
        catch (CultureNotFoundException)
        {
            // Without cultures installed there is no other language to try.
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Theory]
    [InlineData("0,05", true, 0.05)]
    [InlineData("1013,25", true, 1013.25)]
    [InlineData("1.013,25", true, 1013.25)]
    [InlineData("1\u00A0234,5", true, 1234.5)]
    [InlineData("\u22122", true, -2)]
    [InlineData("1,234.5", false, 1234.5)]
    [InlineData("+5", false, 5)]
    [InlineData("1e3", false, 1000)]
    [InlineData("0x1F", false, double.NaN)]
    [InlineData("1.2.3", false, double.NaN)]
    [InlineData("inf", false, double.NaN)]
    [InlineData("NaN", false, double.NaN)]
    [InlineData("---", false, double.NaN)]
    [InlineData("", false, double.NaN)]
    public void Numbers(string field, bool comma, double value) => Assert.Equal(value, LogNumber.Of(field, comma));

    [Theory]
    [InlineData("12:03", 723)]
    [InlineData("1:02:03.5", 3723.5)]
    [InlineData("12:3a", double.NaN)]
    public void Times_of_day(string field, double seconds) => Assert.Equal(seconds, LogNumber.Clock(field));

    [Fact]
    public void A_unit_nobody_names_is_told_by_its_values_and_said()
    {
        var reading = LogFile.Read(Plain().Replace("time_s,pressure_Pa,accel_mps2", "time,pressure,accel", StringComparison.Ordinal), []);
        Same(Record(reading));
        Assert.Equal(3, reading.Notes.Count(n => n.Contains("has no unit", StringComparison.Ordinal)));
    }

    // A height of 0 on the pad may be metres or feet.
    [Fact]
    public void A_height_without_a_unit_is_asked_for()
    {
        var text = "time_s,altitude\n" + string.Concat(Flight.Select((f, i) => $"{Number(f.Time, '.')},{i}\n"));
        var asked = LogFile.Read(text, []);
        Assert.Null(asked.Record);
        var problem = Assert.Single(asked.Problems);
        Assert.Contains("height = altitude in m", problem.Suggestion, StringComparison.Ordinal);
        Assert.Equal(199 * 0.3048, Record(LogFile.Read(text, ["height = altitude in ft"])).ShownHeight[^1], 1e-9);
    }

    [Fact]
    public void Everything_unclear_is_asked_at_once()
    {
        var text = "Q,ax,ay,az,W\n" + string.Concat(Flight.Select(f => $"{Number(f.Time, '.')},1,2,{Number(f.Acceleration, '.')},{Number(f.Pressure, '.')}\n"));
        var asked = LogFile.Read(text, []);
        Assert.Equal(3, asked.Problems.Count);
        Assert.All(asked.Problems, p => Assert.Equal(1, p.Line));
        var told = LogFile.Read(text, ["time = Q in s", "acceleration = az in m/s2", "pressure = W"]);
        Assert.Equal(Flight.Length, Record(told).Time.Count);
    }

    [Theory]
    [InlineData("height", "does not say what a column holds")]
    [InlineData("weather = time_s", "does not say what a column holds")]
    [InlineData("pressure = Baro in Pa", "There is no column 'Baro'")]
    [InlineData("pressure = pressure_Pa in feet", "'feet' is no unit of pressure")]
    public void A_mapping_that_cannot_be_says_so(string typed, string message) => Assert.Contains(message, LogFile.Read(Plain(), [typed]).Problems[0].Message, StringComparison.Ordinal);

    [Fact]
    public void Gaps_and_duplicates_and_steps_back_are_mended_and_counted()
    {
        var lines = Plain().Split('\n', StringSplitOptions.RemoveEmptyEntries).ToList();
        lines[100] = lines[100].Split(',')[0] + ",,ovf,0";
        lines.Insert(60, lines[60]);
        (lines[80], lines[81]) = (lines[81], lines[80]);
        lines.Insert(90, "1,2");
        var reading = LogFile.Read(string.Join('\n', lines) + "\n4.5", []);
        var record = Record(reading);
        Assert.Equal(Flight.Length - 1, record.Time.Count);
        Assert.All(record.Time.Zip(record.Time.Skip(1)), t => Assert.True(t.Second > t.First));
        Assert.Single(record.Pressure, double.IsNaN);
        Assert.Contains(reading.Notes, n => n.Contains("line 91", StringComparison.Ordinal));
        Assert.Contains(reading.Notes, n => n.Contains("cut off", StringComparison.Ordinal));
        Assert.Contains(reading.Notes, n => n.Contains("goes back a little", StringComparison.Ordinal));
        Assert.Contains(reading.Notes, n => n.Contains("mean of both", StringComparison.Ordinal));
        Assert.Contains(reading.Notes, n => n.Contains("'ovf' in line", StringComparison.Ordinal));
    }

    [Fact]
    public void A_counter_that_began_anew_is_carried_on()
    {
        var text = "time_ms,pressure_Pa\n" + string.Concat(Flight.Select(f => $"{(60_000 + (int)(f.Time * 1000)) % 65_536},{Number(f.Pressure, '.')}\n"));
        var record = Record(LogFile.Read(text, []));
        Assert.Equal(Flight.Length, record.Time.Count);
        Assert.Equal(9.95, record.Time[^1] - record.Time[0], 1e-6);
    }

    [Fact]
    public void Two_flights_in_one_file_are_told_apart()
    {
        var problem = Assert.Single(LogFile.Read(Plain() + Plain().Split('\n', 2)[1], []).Problems);
        Assert.Equal((202, true), (problem.Line, problem.Message.Contains("another flight", StringComparison.Ordinal)));
        Assert.Equal(202, Assert.Single(LogFile.Read(Plain() + Plain().Replace("\n0,", "\n11,", StringComparison.Ordinal), []).Problems, p => p.Message.Contains("names", StringComparison.Ordinal)).Line);
    }

    [Fact]
    public void What_no_sensor_can_say_is_left_out()
    {
        var lines = Plain().Split('\n', StringSplitOptions.RemoveEmptyEntries);
        lines[50] = "2.45,5,85.5,0";
        for (var i = 60; i < 90; i++) lines[i] = $"{lines[i].Split(',')[0]},96000,{(i % 2 == 0 ? 9 : 60)},0";
        var reading = LogFile.Read(string.Join('\n', lines), []);
        Assert.Contains(reading.Notes, n => n.Contains("outside 1 to 110 kPa", StringComparison.Ordinal));
        Assert.Contains(reading.Notes, n => n.Contains("stuck", StringComparison.Ordinal));
        Assert.Equal(30, Record(reading).Pressure.Count(double.IsNaN));
    }

    [Theory]
    [InlineData("", "empty")]
    [InlineData("\0\0\0\0", "empty")]
    [InlineData("hello\nworld\n", "two values")]
    [InlineData("time_s,pressure_Pa\n", "two values")]
    [InlineData("time,pressure\n0,05,1013,25\n0,10,1013,20\n", "Commas part the columns and are decimal signs too")]
    [InlineData("time_s,pressure_Pa\n0,97000\n1,97000\n", "2 lines of values")]
    public void What_is_no_flight_says_why(string text, string message)
    {
        var reading = LogFile.Read(text, []);
        Assert.Null(reading.Record);
        Assert.Contains(reading.Problems, p => p.Message.Contains(message, StringComparison.Ordinal));
        Assert.All(reading.Problems, p => Assert.NotEqual("", p.Suggestion));
    }

    [Fact]
    public void Too_many_ragged_lines_are_refused_with_the_first()
    {
        var lines = Plain().Split('\n', StringSplitOptions.RemoveEmptyEntries);
        for (var i = 20; i < 60; i++) lines[i] += ",9,9";
        var problem = Assert.Single(LogFile.Read(string.Join('\n', lines) + "\n", []).Problems);
        Assert.Equal((21, true), (problem.Line, problem.Message.StartsWith("40 of 200 lines", StringComparison.Ordinal)));
    }

    [Fact]
    public void A_column_mostly_missing_is_refused()
    {
        var text = "time_s,pressure_Pa\n" + string.Concat(Flight.Select((f, i) => $"{Number(f.Time, '.')},{(i % 3 == 0 ? "" : Number(f.Pressure, '.'))}\n"));
        Assert.Contains(LogFile.Read(text, []).Problems, p => p.Message.Contains("More than a fifth of column 'pressure_Pa'", StringComparison.Ordinal));
    }

    [Fact]
    public void A_huge_file_is_refused_by_its_size() => Assert.Contains("larger than 50 MB", LogFile.Read(new byte[LogFile.Largest + 1], []).Problems[0].Message, StringComparison.Ordinal);

    // Nothing that random bytes and cut texts hold may end in anything but a reading or reasons.
    [Fact]
    public void Nonsense_never_throws()
    {
        var whole = Encoding.UTF8.GetBytes(Plain());
        Gen.Select(Gen.Int[0, whole.Length - 1], Gen.Byte.Array[0, 60]).Sample((at, noise) =>
        {
            byte[] broken = [.. whole[..at], .. noise, .. whole[Math.Min(whole.Length, at + noise.Length)..]];
            var reading = LogFile.Read(broken, []);
            Assert.True(reading.Record is not null || reading.Problems.Count > 0);
        });
    }

    private static FlightRecord Record(LogReading reading)
    {
        Assert.Empty(reading.Problems);
        return reading.Record!;
    }

    private static void Same(FlightRecord record)
    {
        Assert.Equal(Flight.Select(f => f.Time), record.Time, Near);
        Assert.Equal(Flight.Select(f => f.Pressure), record.Pressure, Near);
        Assert.Equal(Flight.Select(f => f.Acceleration), record.Acceleration, Near);
        Assert.Equal(7.55, Assert.Single(record.Firings).Time, 1e-9);
    }

    private static bool Near(double a, double b) => Math.Abs(a - b) <= 1e-9 * Math.Max(1, Math.Abs(a));

    private static string Plain() => "time_s,pressure_Pa,accel_mps2,drogue_fired\n" + string.Concat(Flight.Select(f => $"{Number(f.Time, '.')},{Number(f.Pressure, '.')},{Number(f.Acceleration, '.')},{(f.Fired ? 1 : 0)}\n"));

    private static string Number(double value, char mark) => Math.Round(value, 6).ToString(CultureInfo.InvariantCulture).Replace('.', mark);
}
