#pragma once

#include <QtCore/QString>

namespace lidlark::design {

/// The faces of every word on the screens.
inline constexpr auto latinFace = "Andika";
inline constexpr auto naskhFace = "Noto Naskh Arabic";

/// Makes sure that @p family can be set: the system's when it is installed, else the copy built
/// into the program, which is only unpacked then. A program without a copy sets the system's next
/// best.
void provideFace(const QString &family);

} // namespace lidlark::design
