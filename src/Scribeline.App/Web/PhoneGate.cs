using System.Security.Cryptography;
using System.Text;

namespace Scribeline.App.Web;

/// <summary>
/// Lets phones in, one for each code. A code is used once, within ten minutes, and only the newest is good; a phone let in has a session until it is
/// sent away or the program ends. Without an <see cref="Address"/> nothing listens and nobody is let in. Safe to use from several threads.
/// </summary>
/// <param name="clock">Tells when a code is too old.</param>
internal sealed class PhoneGate(TimeProvider clock)
{
    /// <summary>How long a code is good.</summary>
    public static readonly TimeSpan Good = TimeSpan.FromMinutes(10);

    // No letter that is taken for another; 16 of them are 78 bits.
    private const string Letters = "ABCDEFGHJKLMNPQRSTUVWXYZ23456789";
    private const int Length = 16;

    private readonly Lock gate = new();
    private readonly Dictionary<string, string> sessions = new(StringComparer.Ordinal);
    private string? code;
    private DateTimeOffset ends;

    /// <summary>Told of every change, from any thread.</summary>
    public event Action? Changed;

    /// <summary>Where phones are answered; null where none are.</summary>
    public Uri? Address { get; private set; }

    /// <summary>The address a phone opens to join; null while no code is good.</summary>
    public Uri? Invitation
    {
        get
        {
            lock (gate) return Address is not null && code is not null && clock.GetUtcNow() < ends ? new Uri(Address, $"join/{code}") : null;
        }
    }

    /// <summary>Local time until which the code is good.</summary>
    public DateTimeOffset Ends
    {
        get
        {
            lock (gate) return TimeZoneInfo.ConvertTime(ends, clock.LocalTimeZone);
        }
    }

    /// <summary>Phones that were let in.</summary>
    public int Phones
    {
        get
        {
            lock (gate) return sessions.Count;
        }
    }

    /// <summary>Begins to let phones in, with a first code.</summary>
    /// <param name="address">Where they are answered.</param>
    public void Open(Uri address)
    {
        Address = address;
        Invite();
    }

    /// <summary>Makes a new code; one that was not used is good no longer.</summary>
    public void Invite()
    {
        lock (gate) (code, ends) = (RandomNumberGenerator.GetString(Letters, Length), clock.GetUtcNow() + Good);
        Changed?.Invoke();
    }

    /// <summary>Uses a code up. It is gone afterwards, whoever asks next.</summary>
    /// <returns>The session of the phone; null where the code is not good.</returns>
    public string? Join(string typed)
    {
        string session;
        lock (gate)
        {
            if (code is null || clock.GetUtcNow() >= ends || !Same(typed.Trim().ToUpperInvariant(), code)) return null;
            code = null;
            session = Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(32));
            sessions.Add(session, Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(16)));
        }

        Changed?.Invoke();
        return session;
    }

    /// <summary>What a form of a session must carry; null for a session that is not, or not any more.</summary>
    /// <param name="session">From the phone.</param>
    public string? TokenOf(string? session)
    {
        lock (gate) return session is null ? null : sessions.GetValueOrDefault(session);
    }

    /// <summary>Ends every session and the code.</summary>
    public void SendAway()
    {
        lock (gate)
        {
            sessions.Clear();
            code = null;
        }

        Changed?.Invoke();
    }

    /// <summary>Compares without telling by its time how much was right.</summary>
    public static bool Same(string one, string other) => CryptographicOperations.FixedTimeEquals(Encoding.UTF8.GetBytes(one), Encoding.UTF8.GetBytes(other));
}
