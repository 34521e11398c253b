using System.Globalization;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Rendering;

namespace Scribeline.App.Components;

/// <summary>A heading whose level follows where it stands, 2 to 6.</summary>
public sealed class DynamicHeading : ComponentBase
{
    /// <summary>Level.</summary>
    [Parameter, EditorRequired]
    public int Level { get; set; }

    /// <summary>Its words.</summary>
    [Parameter]
    public RenderFragment? ChildContent { get; set; }

    protected override void BuildRenderTree(RenderTreeBuilder builder)
    {
        builder.OpenElement(0, "h" + Math.Clamp(Level, 2, 6).ToString(CultureInfo.InvariantCulture));
        builder.AddContent(1, ChildContent);
        builder.CloseElement();
    }
}
