#pragma once

#include <QtCore/QObject>
#include <QtQml/qqmlregistration.h>

namespace lidlark::design {

/// The closed lists that the look is chosen from. In QML they read as Theme.Dark, Theme.Away,
/// Theme.Title.
class ThemeChoices : public QObject
{
    Q_OBJECT
    QML_ANONYMOUS
public:
    using QObject::QObject;

    /// How much light and contrast the whole app has.
    enum Scheme { Light, Dark, HighContrast };
    Q_ENUM(Scheme)

    /// Whose cloth lies at the foot of every screen. Never shown by colour alone: each has a weave.
    enum Place { Home, SecondHome, School, Away };
    Q_ENUM(Place)

    /// What a control lies on; decides the colour of its words and of its focus ring.
    enum Ground { OnSheet, OnCloth, OnSafety, OnPicture };
    Q_ENUM(Ground)

    /// What a piece of text is for; decides its size, line and weight.
    enum Role {
        BigYes,
        Title,
        Question,
        Heading,
        Step,
        Row,
        Label,
        Strong,
        Body,
        Reason,
        CautionLead,
        Caption,
        TabWord,
        Number
    };
    Q_ENUM(Role)
};

} // namespace lidlark::design
