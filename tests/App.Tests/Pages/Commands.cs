using System.Text;
using Doughwright.App.Commands;
using Doughwright.Engine.Kitchens;
using Doughwright.Engine.TextForm;

namespace Doughwright.App.Tests.Pages;

/// <summary>Kitchens that come with the program.</summary>
internal static class Commands
{
    public static Kitchen KitchenNamed(string name) => KitchenText.Read(Encoding.UTF8.GetString(KitchenShelf.Bytes(name))).Kitchen!;
}
