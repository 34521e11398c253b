using System.Net;
using System.Net.NetworkInformation;
using System.Net.Sockets;

namespace Scribeline.App.Web;

/// <summary>Addresses that reach no farther than the network a machine stands in.</summary>
internal static class LocalNetwork
{
    /// <summary>This machine's addresses in its local networks, one with a way out first.</summary>
    public static IReadOnlyList<IPAddress> Addresses() =>
        [.. NetworkInterface.GetAllNetworkInterfaces()
            .Where(n => n.OperationalStatus == OperationalStatus.Up && n.NetworkInterfaceType != NetworkInterfaceType.Loopback)
            .Select(n => n.GetIPProperties())
            .OrderByDescending(p => p.GatewayAddresses.Count)
            .SelectMany(p => p.UnicastAddresses).Select(a => a.Address).Where(IsLocal)];

    /// <summary>Whether an address is of a local network: RFC 1918, or link-local of RFC 3927.</summary>
    public static bool IsLocal(IPAddress address)
    {
        var plain = address.IsIPv4MappedToIPv6 ? address.MapToIPv4() : address;
        return plain.AddressFamily == AddressFamily.InterNetwork && plain.GetAddressBytes() is [10, ..] or [172, >= 16 and <= 31, ..] or [192, 168, ..] or [169, 254, ..];
    }
}
