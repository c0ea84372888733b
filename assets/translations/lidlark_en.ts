<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en" sourcelanguage="en">
<context>
    <name>ItemWords</name>
    <message numerus="yes">
        <source>%n still in use.</source>
        <translation>
            <numerusform>%n is still in use.</numerusform>
            <numerusform>%n are still in use.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lidlark::mobile::GoalNumbersViewModel</name>
    <message numerus="yes">
        <source>%n goals that ended are left out of these values.</source>
        <translation>
            <numerusform>%n goal that ended is left out of these values.</numerusform>
            <numerusform>%n goals that ended are left out of these values.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>OwnActivityScreen</name>
    <message numerus="yes">
        <source>Something is still to do in %n parts</source>
        <translation>
            <numerusform>Something is still to do in %n part</numerusform>
            <numerusform>Something is still to do in %n parts</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>OwnItemScreen</name>
    <message numerus="yes">
        <source>Something is still to do in %n parts</source>
        <translation>
            <numerusform>Something is still to do in %n part</numerusform>
            <numerusform>Something is still to do in %n parts</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ReportScreen</name>
    <message numerus="yes">
        <source>All that lies in %n boxes, over the plays shared with you.</source>
        <translation>
            <numerusform>All that lies in %n box, over the plays shared with you.</numerusform>
            <numerusform>All that lies in %n boxes, over the plays shared with you.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n boxes left out: what lies in it has no price here, or one in other money.</source>
        <translation>
            <numerusform>%n box left out: what lies in it has no price here, or one in other money.</numerusform>
            <numerusform>%n boxes left out: what lies in them has no price here, or one in other money.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>TodayHead</name>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>and %n more</numerusform>
            <numerusform>and %n more</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lidlark::mobile::OwnBoxesViewModel</name>
    <message numerus="yes">
        <source>In the box: %n of them.</source>
        <translation>
            <numerusform>In the box: %n of them.</numerusform>
            <numerusform>In the box: %n of them.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lidlark::mobile::BoxViewModel</name>
    <message numerus="yes">
        <source>%n asked for.</source>
        <translation>
            <numerusform>%n asked for.</numerusform>
            <numerusform>%n asked for.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n running low.</source>
        <translation>
            <numerusform>%n running low.</numerusform>
            <numerusform>%n running low.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lidlark::mobile::EverythingViewModel</name>
    <message numerus="yes">
        <source>%n minute(s)</source>
        <translation>
            <numerusform>%n minute</numerusform>
            <numerusform>%n minutes</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lidlark::mobile::HomeSheetViewModel</name>
    <message numerus="yes">
        <source>%1, %n month(s)</source>
        <translation>
            <numerusform>%1, %n month</numerusform>
            <numerusform>%1, %n months</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1, %n year(s)</source>
        <translation>
            <numerusform>%1, %n year</numerusform>
            <numerusform>%1, %n years</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lidlark::mobile::WeekViewModel</name>
    <message numerus="yes">
        <source>%n minute(s)</source>
        <translation>
            <numerusform>%n minute</numerusform>
            <numerusform>%n minutes</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lidlark::mobile::WelcomeViewModel</name>
    <message numerus="yes">
        <source>%n year(s)</source>
        <translation>
            <numerusform>%n year</numerusform>
            <numerusform>%n years</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lidlark::mobile::CaseloadViewModel</name>
    <message numerus="yes">
        <source>%n boxes</source>
        <translation>
            <numerusform>%n box</numerusform>
            <numerusform>%n boxes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n things to pack.</source>
        <translation>
            <numerusform>%n thing to pack.</numerusform>
            <numerusform>%n things to pack.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>lidlark::mobile::RoundViewModel</name>
    <message numerus="yes">
        <source>%n pieces</source>
        <translation>
            <numerusform>%n piece</numerusform>
            <numerusform>%n pieces</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n to pack</source>
        <translation>
            <numerusform>%n to pack</numerusform>
            <numerusform>%n to pack</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ShelfWords</name>
    <message numerus="yes">
        <source>%n pieces</source>
        <translation>
            <numerusform>%n piece</numerusform>
            <numerusform>%n pieces</numerusform>
        </translation>
    </message>
</context>
</TS>
