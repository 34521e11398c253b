using System.Net;
using Scribeline.App.Web;

namespace Scribeline.App.Commands;

/// <summary>Which address phones are answered at.</summary>
internal static class PhoneAddress
{
    /// <summary>The address meant, or why there is none.</summary>
    /// <param name="typed">As typed; null for the first local one.</param>
    /// <param name="opened">Whether a design is opened.</param>
    public static (IPAddress? Address, string? Refused) Of(string? typed, bool opened)
    {
        if (!opened) return (null, "Phones look at one design. Type it: scribeline open FILE --field");
        var own = LocalNetwork.Addresses();
        if (typed is null) return own.Count > 0 ? (own[0], null) : (null, "This machine is in no local network. Join one, or let the phone open one for it, and start again.");
        if (IPAddress.TryParse(typed, out var address) && own.Contains(address)) return (address, null);
        return (null, $"{typed} is no address of this machine in a local network. {(own.Count > 0 ? $"Type one of {string.Join(", ", own)}, or nothing." : "This machine is in none.")}");
    }
}
