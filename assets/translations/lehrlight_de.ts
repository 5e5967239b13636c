<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>language</name>
    <message>
        <source>English</source>
        <comment>name</comment>
        <translation>Deutsch</translation>
    </message>
    <message>
        <source>1.5</source>
        <comment>decimal</comment>
        <translation>1,5</translation>
    </message>
</context>
<context>
    <name>scene.bubble</name>
    <message>
        <source>Bubble</source>
        <comment>title</comment>
        <translation>Glaskolben</translation>
    </message>
    <message>
        <source>Fresh from the pipe, {hot:.0f} °C. A first answer for the cold foot: outside squeezed with {squeeze:.0f} MPa, inside pulled with {pull:.0f} MPa.</source>
        <comment>text.fresh</comment>
        <translation>Frisch von der Pfeife, {hot:.0f} °C. Erste Schätzung für den kalten Boden: außen {squeeze:.0f} MPa Druck, innen {pull:.0f} MPa Zug.</translation>
    </message>
    <message>
        <source>Fresh from the pipe, {hot:.0f} °C, and into the oven. A first answer: after {hours:.0f} hours hardly {stress:.1f} MPa will be left.</source>
        <comment>text.fresh_oven</comment>
        <translation>Frisch von der Pfeife, {hot:.0f} °C, und in den Kühlofen. Erste Schätzung: Nach {hours:.0f} Stunden bleiben kaum {stress:.1f} MPa.</translation>
    </message>
    <message>
        <source>The outside of the foot is stiff already, its inside is still soft at {inside:.0f} °C and gives way.</source>
        <comment>text.soft</comment>
        <translation>Der Boden ist außen schon starr, innen mit {inside:.0f} °C noch weich: Dort gibt er nach.</translation>
    </message>
    <message>
        <source>The oven keeps inside and outside alike: {outside:.0f} and {inside:.0f} °C. So both stiffen together.</source>
        <comment>text.even</comment>
        <translation>Der Ofen hält innen und außen fast gleich warm: außen {outside:.0f}, innen {inside:.0f} °C. So erstarren beide zusammen.</translation>
    </message>
    <message>
        <source>All of it is stiff now. The inside is still hotter and shrinks more: it squeezes the outside with {squeeze:.0f} MPa.</source>
        <comment>text.shrinking</comment>
        <translation>Jetzt ist alles starr. Das Innere ist noch heißer und schrumpft mehr: Es setzt die Außenseite unter {squeeze:.0f} MPa Druck.</translation>
    </message>
    <message>
        <source>Cold, and this stays: the outside of the foot is squeezed with {squeeze:.0f} MPa, the inside pulled with {pull:.0f} MPa.</source>
        <comment>text.locked</comment>
        <translation>Kalt, und das bleibt: Der Boden steht außen unter {squeeze:.0f} MPa Druck, innen unter {pull:.0f} MPa Zug.</translation>
    </message>
    <message>
        <source>Cold and calm after {hours:.0f} hours in the oven: less than {stress:.1f} MPa is left, and the picture is dark.</source>
        <comment>text.calm</comment>
        <translation>Kalt und ruhig nach {hours:.0f} Stunden im Kühlofen: Weniger als {stress:.1f} MPa bleiben, und das Bild ist dunkel.</translation>
    </message>
    <message>
        <source>The flask is still hot. The test comes once it is cold.</source>
        <comment>text.wait</comment>
        <translation>Der Kolben ist noch heiß. Geprüft wird er, wenn er kalt ist.</translation>
    </message>
    <message>
        <source>A blow of {energy:.1f} J from outside, and it holds: half of such flasks bear {limit:.1f} J. The squeezed skin keeps flaws shut.</source>
        <comment>text.blow_held</comment>
        <translation>Ein Schlag von außen mit {energy:.1f} J, und er hält: Die Hälfte solcher Kolben erträgt {limit:.1f} J. Die Außenhaut steht unter Druck und hält Fehlstellen geschlossen.</translation>
    </message>
    <message>
        <source>A blow of {energy:.1f} J from outside, and it holds. Half of such flasks bear {limit:.1f} J: no squeezed skin helps this one.</source>
        <comment>text.blow_held_calm</comment>
        <translation>Ein Schlag von außen mit {energy:.1f} J, und er hält. Die Hälfte solcher Kolben erträgt {limit:.1f} J: Diesem hilft keine Druckschicht.</translation>
    </message>
    <message>
        <source>A blow of {energy:.1f} J was too much: half of such flasks bear {limit:.1f} J.</source>
        <comment>text.blow_broke</comment>
        <translation>Ein Schlag mit {energy:.1f} J war zu viel: Die Hälfte solcher Kolben erträgt {limit:.1f} J.</translation>
    </message>
    <message>
        <source>A scratch of {depth:.0f} µm inside, and it holds. It takes {limit:.0f} µm for the pull to open it.</source>
        <comment>text.scratch_held</comment>
        <translation>Innen ein Kratzer von {depth:.0f} µm, und er hält. Erst ab {limit:.0f} µm zieht ihn der Zug auf.</translation>
    </message>
    <message>
        <source>A scratch of {depth:.0f} µm inside, and nothing happens: in there nothing pulls. It takes a blow of {load:.2g} J from outside to open it.</source>
        <comment>text.scratch_held_calm</comment>
        <translation>Innen ein Kratzer von {depth:.0f} µm, und nichts geschieht: Dort herrscht kein Zug. Erst ein Schlag von außen mit {load:.2g} J öffnet ihn.</translation>
    </message>
    <message>
        <source>A scratch of {depth:.0f} µm inside, and it holds: the pull in there is too weak to open any. It takes a blow of {load:.2g} J from outside.</source>
        <comment>text.scratch_held_weak</comment>
        <translation>Innen ein Kratzer von {depth:.0f} µm, und er hält: Der Zug dort ist zu schwach, um einen zu öffnen. Es braucht einen Schlag von außen mit {load:.2g} J.</translation>
    </message>
    <message>
        <source>No scratch, and nothing happens.</source>
        <comment>text.no_scratch</comment>
        <translation>Kein Kratzer, und nichts geschieht.</translation>
    </message>
    <message>
        <source>A scratch of {depth:.0f} µm inside was enough: the pull opens it from {limit:.0f} µm on, and the stored {energy:.2f} J shatter the flask.</source>
        <comment>text.scratch_shattered</comment>
        <translation>Innen ein Kratzer von {depth:.0f} µm genügte: Ab {limit:.0f} µm öffnet ihn der Zug, und die gespeicherten {energy:.2f} J zertrümmern den Kolben.</translation>
    </message>
    <message>
        <source>A scratch of {depth:.0f} µm inside was enough: from {limit:.0f} µm on the pull opens it. The thin glass stores too little to shatter.</source>
        <comment>text.scratch_cracked</comment>
        <translation>Innen ein Kratzer von {depth:.0f} µm genügte: Ab {limit:.0f} µm öffnet ihn der Zug. Zum Zertrümmern speichert das dünne Glas zu wenig.</translation>
    </message>
    <message>
        <source>around the flask</source>
        <comment>text.stress</comment>
        <translation>um den Kolben herum</translation>
    </message>
    <message>
        <source>below the outside</source>
        <comment>text.depth</comment>
        <translation>unter der Außenseite</translation>
    </message>
    <message>
        <source>in the foot</source>
        <comment>text.through_foot</comment>
        <translation>im Boden</translation>
    </message>
    <message>
        <source>first answer</source>
        <comment>text.through_first</comment>
        <translation>erste Schätzung</translation>
    </message>
    <message>
        <source>stress</source>
        <comment>text.pull</comment>
        <translation>Spannung</translation>
    </message>
    <message>
        <source>Hit it outside</source>
        <comment>action.hit</comment>
        <translation>Außen anschlagen</translation>
    </message>
    <message>
        <source>Scratch it inside</source>
        <comment>action.scratch</comment>
        <translation>Innen ritzen</translation>
    </message>
    <message>
        <source>A whole one again</source>
        <comment>action.whole</comment>
        <translation>Wieder ein heiler</translation>
    </message>
    <message>
        <source>Glass</source>
        <comment>setting.glass</comment>
        <translation>Glas</translation>
    </message>
    <message>
        <source>What it is made of.</source>
        <comment>setting.glass.help</comment>
        <translation>Woraus es besteht.</translation>
    </message>
    <message>
        <source>Borosilicate</source>
        <comment>choice.glass.borosilicate</comment>
        <translation>Borosilikat</translation>
    </message>
    <message>
        <source>Fused silica</source>
        <comment>choice.glass.fused-silica</comment>
        <translation>Kieselglas</translation>
    </message>
    <message>
        <source>Lead crystal</source>
        <comment>choice.glass.lead-crystal</comment>
        <translation>Bleikristall</translation>
    </message>
    <message>
        <source>Soda lime</source>
        <comment>choice.glass.soda-lime</comment>
        <translation>Kalknatron</translation>
    </message>
    <message>
        <source>Diameter</source>
        <comment>setting.outer_diameter_mm</comment>
        <translation>Durchmesser</translation>
    </message>
    <message>
        <source>Outer diameter of the flask.</source>
        <comment>setting.outer_diameter_mm.help</comment>
        <translation>Außendurchmesser des Kolbens.</translation>
    </message>
    <message>
        <source>Length</source>
        <comment>setting.length_mm</comment>
        <translation>Länge</translation>
    </message>
    <message>
        <source>From the foot to the mouth.</source>
        <comment>setting.length_mm.help</comment>
        <translation>Vom Boden bis zur Mündung.</translation>
    </message>
    <message>
        <source>Foot</source>
        <comment>setting.base_mm</comment>
        <translation>Boden</translation>
    </message>
    <message>
        <source>Thickness in the middle of the foot.</source>
        <comment>setting.base_mm.help</comment>
        <translation>Dicke in der Mitte des Bodens.</translation>
    </message>
    <message>
        <source>Wall</source>
        <comment>setting.wall_mm</comment>
        <translation>Wand</translation>
    </message>
    <message>
        <source>Thickness of the wall.</source>
        <comment>setting.wall_mm.help</comment>
        <translation>Dicke der Wand.</translation>
    </message>
    <message>
        <source>Cooled</source>
        <comment>setting.way</comment>
        <translation>Gekühlt</translation>
    </message>
    <message>
        <source>In the open, or by an oven programme.</source>
        <comment>setting.way.help</comment>
        <translation>An der Luft oder nach einem Ofenprogramm.</translation>
    </message>
    <message>
        <source>Air</source>
        <comment>choice.way.air</comment>
        <translation>Luft</translation>
    </message>
    <message>
        <source>Oven</source>
        <comment>choice.way.oven</comment>
        <translation>Ofen</translation>
    </message>
    <message>
        <source>Test</source>
        <comment>setting.test</comment>
        <translation>Prüfung</translation>
    </message>
    <message>
        <source>What is done to the cold flask.</source>
        <comment>setting.test.help</comment>
        <translation>Was mit dem kalten Kolben geschieht.</translation>
    </message>
    <message>
        <source>None</source>
        <comment>choice.test.none</comment>
        <translation>Keine</translation>
    </message>
    <message>
        <source>Blow</source>
        <comment>choice.test.blow</comment>
        <translation>Schlag</translation>
    </message>
    <message>
        <source>Scratch</source>
        <comment>choice.test.scratch</comment>
        <translation>Kratzer</translation>
    </message>
    <message>
        <source>Blow</source>
        <comment>setting.blow_J</comment>
        <translation>Schlag</translation>
    </message>
    <message>
        <source>Energy of a soft blow on the foot, from outside.</source>
        <comment>setting.blow_J.help</comment>
        <translation>Energie eines weichen Schlags von außen auf den Boden.</translation>
    </message>
    <message>
        <source>Scratch</source>
        <comment>setting.scratch_um</comment>
        <translation>Kratzer</translation>
    </message>
    <message>
        <source>Depth of a long scratch inside the foot.</source>
        <comment>setting.scratch_um.help</comment>
        <translation>Tiefe eines langen Kratzers innen im Boden.</translation>
    </message>
    <message>
        <source>Foot, outside</source>
        <comment>reading.base_outside_MPa</comment>
        <translation>Boden außen</translation>
    </message>
    <message>
        <source>Of the cold flask; until then foreseen.</source>
        <comment>reading.base_outside_MPa.help</comment>
        <translation>Am kalten Kolben; bis dahin vorausgesagt.</translation>
    </message>
    <message>
        <source>Foot, inside</source>
        <comment>reading.base_inside_MPa</comment>
        <translation>Boden innen</translation>
    </message>
    <message>
        <source>Of the cold flask; until then foreseen.</source>
        <comment>reading.base_inside_MPa.help</comment>
        <translation>Am kalten Kolben; bis dahin vorausgesagt.</translation>
    </message>
    <message>
        <source>Wall, outside</source>
        <comment>reading.wall_outside_MPa</comment>
        <translation>Wand außen</translation>
    </message>
    <message>
        <source>Of the cold flask; until then foreseen.</source>
        <comment>reading.wall_outside_MPa.help</comment>
        <translation>Am kalten Kolben; bis dahin vorausgesagt.</translation>
    </message>
    <message>
        <source>Wall, inside</source>
        <comment>reading.wall_inside_MPa</comment>
        <translation>Wand innen</translation>
    </message>
    <message>
        <source>Of the cold flask; until then foreseen.</source>
        <comment>reading.wall_inside_MPa.help</comment>
        <translation>Am kalten Kolben; bis dahin vorausgesagt.</translation>
    </message>
    <message>
        <source>Largest pull inside</source>
        <comment>reading.inside_peak_MPa</comment>
        <translation>Größter Zug innen</translation>
    </message>
    <message>
        <source>Of the cold flask, anywhere.</source>
        <comment>reading.inside_peak_MPa.help</comment>
        <translation>Irgendwo am kalten Kolben.</translation>
    </message>
    <message>
        <source>Answer</source>
        <comment>reading.answer</comment>
        <translation>Antwort</translation>
    </message>
    <message>
        <source>first: plates twice as thick; full: the whole flask.</source>
        <comment>reading.answer.help</comment>
        <translation>erste Schätzung: Platten doppelter Dicke; ganz berechnet: der Kolben.</translation>
    </message>
    <message>
        <source>first</source>
        <comment>value.answer.first</comment>
        <translation>erste Schätzung</translation>
    </message>
    <message>
        <source>full</source>
        <comment>value.answer.full</comment>
        <translation>ganz berechnet</translation>
    </message>
    <message>
        <source>Progress</source>
        <comment>reading.progress_pct</comment>
        <translation>Fortschritt</translation>
    </message>
    <message>
        <source>Of the full answer.</source>
        <comment>reading.progress_pct.help</comment>
        <translation>Der vollen Antwort.</translation>
    </message>
    <message>
        <source>Scratch that breaks it</source>
        <comment>reading.scratch_to_break_um</comment>
        <translation>Kratzer, der ihn bricht</translation>
    </message>
    <message>
        <source>Inside; none: no depth does.</source>
        <comment>reading.scratch_to_break_um.help</comment>
        <translation>Innen; keiner: keine Tiefe genügt.</translation>
    </message>
    <message>
        <source>Blow that breaks it</source>
        <comment>reading.blow_to_break_J</comment>
        <translation>Schlag, der ihn bricht</translation>
    </message>
    <message>
        <source>Outside; half of such flasks break.</source>
        <comment>reading.blow_to_break_J.help</comment>
        <translation>Außen; die Hälfte solcher Kolben bricht.</translation>
    </message>
    <message>
        <source>Odds of a break</source>
        <comment>reading.break_probability</comment>
        <translation>Bruchwahrscheinlichkeit</translation>
    </message>
    <message>
        <source>Of the chosen test.</source>
        <comment>reading.break_probability.help</comment>
        <translation>Bei der gewählten Prüfung.</translation>
    </message>
    <message>
        <source>Breaks</source>
        <comment>reading.breaks</comment>
        <translation>Bricht</translation>
    </message>
    <message>
        <source>The verdict for the test as stated.</source>
        <comment>reading.breaks.help</comment>
        <translation>Das Urteil für die Prüfung wie angegeben.</translation>
    </message>
    <message>
        <source>Cracks run by themselves</source>
        <comment>reading.runs_by_itself</comment>
        <translation>Risse laufen von selbst</translation>
    </message>
    <message>
        <source>Once they reach the pull.</source>
        <comment>reading.runs_by_itself.help</comment>
        <translation>Sobald sie den Zug erreichen.</translation>
    </message>
    <message>
        <source>Dice</source>
        <comment>reading.pieces</comment>
        <translation>Krümel</translation>
    </message>
    <message>
        <source>That the stored energy makes of it; 1: none.</source>
        <comment>reading.pieces.help</comment>
        <translation>Die die gespeicherte Energie daraus macht; 1: keine.</translation>
    </message>
    <message>
        <source>Stored energy</source>
        <comment>reading.stored_energy_J</comment>
        <translation>Gespeicherte Energie</translation>
    </message>
    <message>
        <source>Net force</source>
        <comment>reading.net_force_N</comment>
        <translation>Resultierende Kraft</translation>
    </message>
    <message>
        <source>Across the middle of the wall: pull less squeeze.</source>
        <comment>reading.net_force_N.help</comment>
        <translation>Quer durch die Wandmitte: Zug minus Druck.</translation>
    </message>
    <message>
        <source>Cooled for</source>
        <comment>reading.hours</comment>
        <translation>Kühldauer</translation>
    </message>
    <message>
        <source>Retardation peak</source>
        <comment>reading.retardation_peak_nm</comment>
        <translation>Größter Gangunterschied</translation>
    </message>
    <message>
        <source>Largest in the picture.</source>
        <comment>reading.retardation_peak_nm.help</comment>
        <translation>Größter Wert im Bild.</translation>
    </message>
</context>
<context>
    <name>scene.cooling</name>
    <message>
        <source>Slow or sudden cooling</source>
        <comment>title</comment>
        <translation>Langsam oder schnell gekühlt</translation>
    </message>
    <message>
        <source>At {inside:.0f} °C the glass still gives way: stress runs out of it as fast as it comes, and the picture stays dark.</source>
        <comment>text.soft</comment>
        <translation>Bei {inside:.0f} °C gibt das Glas noch nach: Spannung fließt so schnell ab, wie sie entsteht, und das Bild bleibt dunkel.</translation>
    </message>
    <message>
        <source>At {inside:.0f} °C the glass still gives way. What little stress shows comes of uneven cooling, and would run out again if the cooling stopped.</source>
        <comment>text.soft_seen</comment>
        <translation>Bei {inside:.0f} °C gibt das Glas noch nach. Die wenige sichtbare Spannung kommt vom ungleichen Abkühlen und flösse wieder ab, wenn es aufhörte.</translation>
    </message>
    <message>
        <source>The oven holds {hold:.0f} °C. What stress there was runs out of the glass: {minutes:.0f} minutes to go.</source>
        <comment>text.holding</comment>
        <translation>Der Ofen hält {hold:.0f} °C. Vorhandene Spannung fließt aus dem Glas ab: noch {minutes:.0f} Minuten.</translation>
    </message>
    <message>
        <source>The oven holds {hold:.0f} °C, too cold to let stress go: the strain point is {strain:.0f} °C. Hold at {anneal:.0f} °C instead.</source>
        <comment>text.holding_cold</comment>
        <translation>Der Ofen hält {hold:.0f} °C, zu kalt, um Spannung abzubauen: Der untere Kühlpunkt ist {strain:.0f} °C. Besser bei {anneal:.0f} °C halten.</translation>
    </message>
    <message>
        <source>Now the glass stiffens. The inside is {hotter:.1f} °C hotter and has more shrinking left to do: this is where stress is born.</source>
        <comment>text.birth</comment>
        <translation>Jetzt erstarrt das Glas. Das Innere ist {hotter:.1f} °C heißer und muss noch mehr schrumpfen: Hier entsteht die Spannung.</translation>
    </message>
    <message>
        <source>Stiff through and through. The inside shrinks after the outside: it is pulled with {pull:.1f} MPa, the outside squeezed with {squeeze:.1f} MPa.</source>
        <comment>text.catching_up</comment>
        <translation>Durch und durch starr. Das Innere schrumpft der Außenseite nach: innen {pull:.1f} MPa Zug, außen {squeeze:.1f} MPa Druck.</translation>
    </message>
    <message>
        <source>The outside is cooler and wants to be smaller than the inside lets it: for now its skin is pulled with {pull:.1f} MPa.</source>
        <comment>text.skin_pulled</comment>
        <translation>Die Außenseite ist kühler und will kleiner sein, als das Innere zulässt: Vorerst steht sie unter {pull:.1f} MPa Zug.</translation>
    </message>
    <message>
        <source>Stiff, but the inside is only {hotter:.1f} °C hotter than the outside: hardly any stress is born, and the picture stays dark.</source>
        <comment>text.even</comment>
        <translation>Starr, aber das Innere ist nur {hotter:.1f} °C heißer als die Außenseite: Es entsteht kaum Spannung, und das Bild bleibt dunkel.</translation>
    </message>
    <message>
        <source>The thin part cools first and shrinks, the thick one holds it back: the thin part is pulled with {thin:.0f} MPa on average, the thick one squeezed with {thick:.0f}.</source>
        <comment>text.joined_first</comment>
        <translation>Der dünne Teil kühlt zuerst und schrumpft, der dicke hält ihn auf: im Mittel {thin:.0f} MPa Zug im dünnen, {thick:.0f} MPa Druck im dicken Teil.</translation>
    </message>
    <message>
        <source>The thin part went stiff first. The thick part still shrinks and is held back: pulled with {thick:.0f} MPa on average, the thin part squeezed with {thin:.0f}.</source>
        <comment>text.joined</comment>
        <translation>Der dünne Teil wurde zuerst starr. Der dicke schrumpft noch und wird aufgehalten: im Mittel {thick:.0f} MPa Zug, im dünnen {thin:.0f} MPa Druck.</translation>
    </message>
    <message>
        <source>Light through the face meets squeeze, pull and squeeze again. They cancel out, so even a strained plate stays dark face-on.</source>
        <comment>text.face_dark</comment>
        <translation>Licht durch die Fläche trifft auf Druck, Zug und wieder Druck. Das hebt sich auf, darum bleibt auch eine verspannte Platte so gesehen dunkel.</translation>
    </message>
    <message>
        <source>Joined parts load each other, and face-on that would show. Here it is only {nm:.0f} nm of retardation: the picture stays dark.</source>
        <comment>text.face_joined_faint</comment>
        <translation>Verbundene Teile belasten einander, und von vorn wäre das zu sehen. Hier sind es nur {nm:.0f} nm Gangunterschied: Das Bild bleibt dunkel.</translation>
    </message>
    <message>
        <source>Along the joint one part is pulled, the other squeezed, with equal forces. Seen face-on that does not cancel out: {nm:.0f} nm in both.</source>
        <comment>text.face_joined</comment>
        <translation>Entlang der Verbindung steht ein Teil unter Zug, der andere unter Druck, mit gleichen Kräften. Von vorn hebt sich das nicht auf: {nm:.0f} nm in beiden.</translation>
    </message>
    <message>
        <source>Cold, but it hardly came through whole: cooling pulled the skin with {pull:.0f} MPa, and handled glass may crack from {strength:.0f} MPa.</source>
        <comment>text.may_crack</comment>
        <translation>Kalt, aber nur knapp heil geblieben: Beim Abkühlen stand die Außenseite unter {pull:.0f} MPa Zug, und gebrauchtes Glas kann ab {strength:.0f} MPa reißen.</translation>
    </message>
    <message>
        <source>Lenses may keep {limit:.0f} (ISO 10110-2); this piece has {nm:.1f} nm on each centimetre. Good enough, after {hours:.1f} hours.</source>
        <comment>text.good_optics</comment>
        <translation>Linsen dürfen {limit:.0f} behalten (ISO 10110-2); dieses Stück hat {nm:.1f} nm auf jedem Zentimeter. Gut genug, nach {hours:.1f} Stunden.</translation>
    </message>
    <message>
        <source>Magnifying glasses may keep {limit:.0f} (ISO 10110-2); this piece has {nm:.1f} nm on each centimetre. Good enough, after {hours:.1f} hours.</source>
        <comment>text.good_magnifier</comment>
        <translation>Lupen dürfen {limit:.0f} behalten (ISO 10110-2); dieses Stück hat {nm:.1f} nm auf jedem Zentimeter. Gut genug, nach {hours:.1f} Stunden.</translation>
    </message>
    <message>
        <source>Bottles may keep {limit:.0f} (temper number 4 by ASTM C148); this piece has {nm:.1f} nm on each centimetre. Good enough, after {hours:.1f} hours.</source>
        <comment>text.good_ware</comment>
        <translation>Flaschen dürfen {limit:.0f} behalten (Kühlgüte 4 nach ASTM C148); dieses Stück hat {nm:.1f} nm auf jedem Zentimeter. Gut genug, nach {hours:.1f} Stunden.</translation>
    </message>
    <message>
        <source>{nm:.0f} nm stay on each centimetre. Lenses may keep {limit:.0f} (ISO 10110-2): too much. Hold at {hold:.0f} °C, then {slow:.3g} °C an hour: {hours:.1f} hours in all would do.</source>
        <comment>text.bad_optics</comment>
        <translation>{nm:.0f} nm bleiben auf jedem Zentimeter. Linsen dürfen {limit:.0f} behalten (ISO 10110-2): zu viel. {hold:.0f} °C halten, dann {slow:.3g} °C je Stunde: {hours:.1f} Stunden insgesamt würden reichen.</translation>
    </message>
    <message>
        <source>{nm:.0f} nm stay on each centimetre. Magnifying glasses may keep {limit:.0f} (ISO 10110-2): too much. Hold at {hold:.0f} °C, then {slow:.3g} °C an hour: {hours:.1f} hours in all would do.</source>
        <comment>text.bad_magnifier</comment>
        <translation>{nm:.0f} nm bleiben auf jedem Zentimeter. Lupen dürfen {limit:.0f} behalten (ISO 10110-2): zu viel. {hold:.0f} °C halten, dann {slow:.3g} °C je Stunde: {hours:.1f} Stunden insgesamt würden reichen.</translation>
    </message>
    <message>
        <source>{nm:.0f} nm stay on each centimetre. Bottles may keep {limit:.0f} (temper number 4 by ASTM C148): too much. Hold at {hold:.0f} °C, then {slow:.3g} °C an hour: {hours:.1f} hours in all would do.</source>
        <comment>text.bad_ware</comment>
        <translation>{nm:.0f} nm bleiben auf jedem Zentimeter. Flaschen dürfen {limit:.0f} behalten (Kühlgüte 4 nach ASTM C148): zu viel. {hold:.0f} °C halten, dann {slow:.3g} °C je Stunde: {hours:.1f} Stunden insgesamt würden reichen.</translation>
    </message>
    <message>
        <source>{nm:.0f} nm stay on each centimetre. Lenses may keep {limit:.0f} (ISO 10110-2): too much, and no programme that was tried would do.</source>
        <comment>text.hopeless_optics</comment>
        <translation>{nm:.0f} nm bleiben auf jedem Zentimeter. Linsen dürfen {limit:.0f} behalten (ISO 10110-2): zu viel, und keines der probierten Programme würde reichen.</translation>
    </message>
    <message>
        <source>{nm:.0f} nm stay on each centimetre. Magnifying glasses may keep {limit:.0f} (ISO 10110-2): too much, and no programme that was tried would do.</source>
        <comment>text.hopeless_magnifier</comment>
        <translation>{nm:.0f} nm bleiben auf jedem Zentimeter. Lupen dürfen {limit:.0f} behalten (ISO 10110-2): zu viel, und keines der probierten Programme würde reichen.</translation>
    </message>
    <message>
        <source>{nm:.0f} nm stay on each centimetre. Bottles may keep {limit:.0f} (temper number 4 by ASTM C148): too much, and no programme that was tried would do.</source>
        <comment>text.hopeless_ware</comment>
        <translation>{nm:.0f} nm bleiben auf jedem Zentimeter. Flaschen dürfen {limit:.0f} behalten (Kühlgüte 4 nach ASTM C148): zu viel, und keines der probierten Programme würde reichen.</translation>
    </message>
    <message>
        <source>time</source>
        <comment>text.time_h</comment>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>temperature</source>
        <comment>text.temperature</comment>
        <translation>Temperatur</translation>
    </message>
    <message>
        <source>stress</source>
        <comment>text.stress</comment>
        <translation>Spannung</translation>
    </message>
    <message>
        <source>outside</source>
        <comment>text.outside</comment>
        <translation>außen</translation>
    </message>
    <message>
        <source>inside</source>
        <comment>text.inside</comment>
        <translation>innen</translation>
    </message>
    <message>
        <source>inside the second part</source>
        <comment>text.second_inside</comment>
        <translation>zweiter Teil innen</translation>
    </message>
    <message>
        <source>oven</source>
        <comment>text.oven</comment>
        <translation>Ofen</translation>
    </message>
    <message>
        <source>surface</source>
        <comment>text.surface</comment>
        <translation>Oberfläche</translation>
    </message>
    <message>
        <source>centre</source>
        <comment>text.centre</comment>
        <translation>Mitte</translation>
    </message>
    <message>
        <source>second part's surface</source>
        <comment>text.second_surface</comment>
        <translation>Oberfläche des zweiten Teils</translation>
    </message>
    <message>
        <source>second part's centre</source>
        <comment>text.second_centre</comment>
        <translation>Mitte des zweiten Teils</translation>
    </message>
    <message>
        <source>annealing point</source>
        <comment>text.anneal</comment>
        <translation>oberer Kühlpunkt</translation>
    </message>
    <message>
        <source>strain point</source>
        <comment>text.strain</comment>
        <translation>unterer Kühlpunkt</translation>
    </message>
    <message>
        <source>pull allowed at the end</source>
        <comment>text.allowed_pull</comment>
        <translation>am Ende erlaubter Zug</translation>
    </message>
    <message>
        <source>squeeze allowed at the end</source>
        <comment>text.allowed_squeeze</comment>
        <translation>am Ende erlaubter Druck</translation>
    </message>
    <message>
        <source>in the plane of the plate</source>
        <comment>text.in_plane</comment>
        <translation>in der Plattenebene</translation>
    </message>
    <message>
        <source>along the joint</source>
        <comment>text.along_joint</comment>
        <translation>entlang der Verbindung</translation>
    </message>
    <message>
        <source>Into the air</source>
        <comment>action.take_out</comment>
        <translation>An die Luft</translation>
    </message>
    <message>
        <source>Into the oven</source>
        <comment>action.put_in</comment>
        <translation>In den Ofen</translation>
    </message>
    <message>
        <source>Take the proposal</source>
        <comment>action.take_proposal</comment>
        <translation>Vorschlag übernehmen</translation>
    </message>
    <message>
        <source>Glass</source>
        <comment>setting.glass</comment>
        <translation>Glas</translation>
    </message>
    <message>
        <source>What it is made of.</source>
        <comment>setting.glass.help</comment>
        <translation>Woraus es besteht.</translation>
    </message>
    <message>
        <source>Borosilicate</source>
        <comment>choice.glass.borosilicate</comment>
        <translation>Borosilikat</translation>
    </message>
    <message>
        <source>Fused silica</source>
        <comment>choice.glass.fused-silica</comment>
        <translation>Kieselglas</translation>
    </message>
    <message>
        <source>Lead crystal</source>
        <comment>choice.glass.lead-crystal</comment>
        <translation>Bleikristall</translation>
    </message>
    <message>
        <source>Soda lime</source>
        <comment>choice.glass.soda-lime</comment>
        <translation>Kalknatron</translation>
    </message>
    <message>
        <source>Thickness</source>
        <comment>setting.thickness_mm</comment>
        <translation>Dicke</translation>
    </message>
    <message>
        <source>Of the plate.</source>
        <comment>setting.thickness_mm.help</comment>
        <translation>Der Platte.</translation>
    </message>
    <message>
        <source>Second thickness</source>
        <comment>setting.second_thickness_mm</comment>
        <translation>Zweite Dicke</translation>
    </message>
    <message>
        <source>Of a part beside it; 0: none.</source>
        <comment>setting.second_thickness_mm.help</comment>
        <translation>Eines Teils daneben; 0: keiner.</translation>
    </message>
    <message>
        <source>One piece</source>
        <comment>setting.joined</comment>
        <translation>Ein Stück</translation>
    </message>
    <message>
        <source>Whether thick and thin are one stepped piece.</source>
        <comment>setting.joined.help</comment>
        <translation>Ob dick und dünn ein abgestuftes Stück sind.</translation>
    </message>
    <message>
        <source>Way</source>
        <comment>setting.way</comment>
        <translation>Weg</translation>
    </message>
    <message>
        <source>Out into the air, or into the oven.</source>
        <comment>setting.way.help</comment>
        <translation>Hinaus an die Luft oder in den Ofen.</translation>
    </message>
    <message>
        <source>Air</source>
        <comment>choice.way.air</comment>
        <translation>Luft</translation>
    </message>
    <message>
        <source>Oven</source>
        <comment>choice.way.oven</comment>
        <translation>Ofen</translation>
    </message>
    <message>
        <source>Programme</source>
        <comment>setting.programme</comment>
        <translation>Programm</translation>
    </message>
    <message>
        <source>Your own below, or the shortest that is good enough.</source>
        <comment>setting.programme.help</comment>
        <translation>Das eigene unten oder das kürzeste, das gut genug ist.</translation>
    </message>
    <message>
        <source>Own</source>
        <comment>choice.programme.own</comment>
        <translation>Eigenes</translation>
    </message>
    <message>
        <source>Proposed</source>
        <comment>choice.programme.proposed</comment>
        <translation>Vorgeschlagen</translation>
    </message>
    <message>
        <source>Hold at</source>
        <comment>setting.hold_C</comment>
        <translation>Halten bei</translation>
    </message>
    <message>
        <source>Where the oven holds.</source>
        <comment>setting.hold_C.help</comment>
        <translation>Wo der Ofen hält.</translation>
    </message>
    <message>
        <source>Hold for</source>
        <comment>setting.hold_min</comment>
        <translation>Halten für</translation>
    </message>
    <message>
        <source>How long it holds.</source>
        <comment>setting.hold_min.help</comment>
        <translation>Wie lange er hält.</translation>
    </message>
    <message>
        <source>Slow</source>
        <comment>setting.slow_C_per_h</comment>
        <translation>Langsam</translation>
    </message>
    <message>
        <source>Cooling through the range where stress is born.</source>
        <comment>setting.slow_C_per_h.help</comment>
        <translation>Kühlen durch den Bereich, in dem Spannung entsteht.</translation>
    </message>
    <message>
        <source>Slow down to</source>
        <comment>setting.slow_to_C</comment>
        <translation>Langsam bis</translation>
    </message>
    <message>
        <source>Where slow becomes fast; 0: 140 °C below the strain point.</source>
        <comment>setting.slow_to_C.help</comment>
        <translation>Wo langsam zu schnell wird; 0: 140 °C unter dem unteren Kühlpunkt.</translation>
    </message>
    <message>
        <source>Fast</source>
        <comment>setting.fast_C_per_h</comment>
        <translation>Schnell</translation>
    </message>
    <message>
        <source>Cooling from there to room temperature.</source>
        <comment>setting.fast_C_per_h.help</comment>
        <translation>Kühlen von dort bis Raumtemperatur.</translation>
    </message>
    <message>
        <source>Good enough for</source>
        <comment>setting.limit</comment>
        <translation>Gut genug für</translation>
    </message>
    <message>
        <source>Lenses (ISO 10110-2: 10 nm/cm), magnifiers (20 nm/cm), ware (ASTM C148: number 4).</source>
        <comment>setting.limit.help</comment>
        <translation>Linsen (ISO 10110-2: 10 nm/cm), Lupen (20 nm/cm), Gebrauchsglas (ASTM C148: Kühlgüte 4).</translation>
    </message>
    <message>
        <source>Optics</source>
        <comment>choice.limit.optics</comment>
        <translation>Optik</translation>
    </message>
    <message>
        <source>Magnifier</source>
        <comment>choice.limit.magnifier</comment>
        <translation>Lupe</translation>
    </message>
    <message>
        <source>Ware</source>
        <comment>choice.limit.ware</comment>
        <translation>Gebrauchsglas</translation>
    </message>
    <message>
        <source>Seen</source>
        <comment>setting.look</comment>
        <translation>Durchsicht</translation>
    </message>
    <message>
        <source>Which way the light goes.</source>
        <comment>setting.look.help</comment>
        <translation>Welchen Weg das Licht nimmt.</translation>
    </message>
    <message>
        <source>Edge on</source>
        <comment>choice.look.edge-on</comment>
        <translation>Durch die Kante</translation>
    </message>
    <message>
        <source>Face on</source>
        <comment>choice.look.face-on</comment>
        <translation>Durch die Fläche</translation>
    </message>
    <message>
        <source>Light's path</source>
        <comment>setting.path_mm</comment>
        <translation>Lichtweg</translation>
    </message>
    <message>
        <source>Width of glass that light passes edge-on.</source>
        <comment>setting.path_mm.help</comment>
        <translation>Breite des Glases, die Licht durch die Kante durchläuft.</translation>
    </message>
    <message>
        <source>Chart</source>
        <comment>setting.chart</comment>
        <translation>Diagramm</translation>
    </message>
    <message>
        <source>What is drawn over time.</source>
        <comment>setting.chart.help</comment>
        <translation>Was über der Zeit gezeichnet wird.</translation>
    </message>
    <message>
        <source>Temperature</source>
        <comment>choice.chart.temperature</comment>
        <translation>Temperatur</translation>
    </message>
    <message>
        <source>Stress</source>
        <comment>choice.chart.stress</comment>
        <translation>Spannung</translation>
    </message>
    <message>
        <source>Surface</source>
        <comment>reading.surface_MPa</comment>
        <translation>Oberfläche</translation>
    </message>
    <message>
        <source>Of the plate; of a stepped piece along its joint.</source>
        <comment>reading.surface_MPa.help</comment>
        <translation>Der Platte; bei einem abgestuften Stück entlang der Verbindung.</translation>
    </message>
    <message>
        <source>Centre</source>
        <comment>reading.centre_MPa</comment>
        <translation>Mitte</translation>
    </message>
    <message>
        <source>Of the plate; of a stepped piece along its joint.</source>
        <comment>reading.centre_MPa.help</comment>
        <translation>Der Platte; bei einem abgestuften Stück entlang der Verbindung.</translation>
    </message>
    <message>
        <source>Second part's surface</source>
        <comment>reading.second_surface_MPa</comment>
        <translation>Oberfläche des zweiten Teils</translation>
    </message>
    <message>
        <source>Second part's centre</source>
        <comment>reading.second_centre_MPa</comment>
        <translation>Mitte des zweiten Teils</translation>
    </message>
    <message>
        <source>Load from the other part</source>
        <comment>reading.load_MPa</comment>
        <translation>Last durch den anderen Teil</translation>
    </message>
    <message>
        <source>Mean through the first part.</source>
        <comment>reading.load_MPa.help</comment>
        <translation>Mittel durch den ersten Teil.</translation>
    </message>
    <message>
        <source>Retardation</source>
        <comment>reading.retardation_nm_per_cm</comment>
        <translation>Gangunterschied</translation>
    </message>
    <message>
        <source>Largest for each cm of path.</source>
        <comment>reading.retardation_nm_per_cm.help</comment>
        <translation>Größter Wert je cm Weg.</translation>
    </message>
    <message>
        <source>Allowed</source>
        <comment>reading.limit_nm_per_cm</comment>
        <translation>Erlaubt</translation>
    </message>
    <message>
        <source>By the limit that is set.</source>
        <comment>reading.limit_nm_per_cm.help</comment>
        <translation>Nach der gewählten Grenze.</translation>
    </message>
    <message>
        <source>Real temper number</source>
        <comment>reading.temper_number</comment>
        <translation>Wirkliche Kühlgüte</translation>
    </message>
    <message>
        <source>ASTM C148: strain discs in 4.06 mm.</source>
        <comment>reading.temper_number.help</comment>
        <translation>ASTM C148: Vergleichsscheiben auf 4,06 mm.</translation>
    </message>
    <message>
        <source>Surface's pull on the way</source>
        <comment>reading.peak_tension_MPa</comment>
        <translation>Zug der Oberfläche unterwegs</translation>
    </message>
    <message>
        <source>Largest over the run.</source>
        <comment>reading.peak_tension_MPa.help</comment>
        <translation>Größter Wert im Lauf.</translation>
    </message>
    <message>
        <source>Outside</source>
        <comment>reading.outside_C</comment>
        <translation>Außen</translation>
    </message>
    <message>
        <source>Inside</source>
        <comment>reading.inside_C</comment>
        <translation>Innen</translation>
    </message>
    <message>
        <source>Cold after</source>
        <comment>reading.hours</comment>
        <translation>Kalt nach</translation>
    </message>
    <message>
        <source>None before it is cold.</source>
        <comment>reading.hours.help</comment>
        <translation>Keine Angabe, bevor es kalt ist.</translation>
    </message>
    <message>
        <source>Good enough</source>
        <comment>reading.acceptable</comment>
        <translation>Gut genug</translation>
    </message>
    <message>
        <source>The verdict; none before it is cold.</source>
        <comment>reading.acceptable.help</comment>
        <translation>Das Urteil; keines, bevor es kalt ist.</translation>
    </message>
    <message>
        <source>Shortest that passes</source>
        <comment>reading.proposed_hours</comment>
        <translation>Kürzestes, das genügt</translation>
    </message>
    <message>
        <source>Stated once the piece is cold.</source>
        <comment>reading.proposed_hours.help</comment>
        <translation>Genannt, sobald das Stück kalt ist.</translation>
    </message>
    <message>
        <source>Proposed: hold at</source>
        <comment>reading.proposed_hold_C</comment>
        <translation>Vorschlag: halten bei</translation>
    </message>
    <message>
        <source>Proposed: hold for</source>
        <comment>reading.proposed_hold_min</comment>
        <translation>Vorschlag: halten für</translation>
    </message>
    <message>
        <source>Proposed: slow</source>
        <comment>reading.proposed_slow_C_per_h</comment>
        <translation>Vorschlag: langsam</translation>
    </message>
    <message>
        <source>Proposed: slow down to</source>
        <comment>reading.proposed_slow_to_C</comment>
        <translation>Vorschlag: langsam bis</translation>
    </message>
    <message>
        <source>Proposed: fast</source>
        <comment>reading.proposed_fast_C_per_h</comment>
        <translation>Vorschlag: schnell</translation>
    </message>
</context>
<context>
    <name>scene.dish</name>
    <message>
        <source>Moulded dish</source>
        <comment>title</comment>
        <translation>Gespritzte Schale</translation>
    </message>
    <message>
        <source>The mould is closed and empty: nothing to be seen yet.</source>
        <comment>text.closed</comment>
        <translation>Die Form ist geschlossen und leer: Noch ist nichts zu sehen.</translation>
    </message>
    <message>
        <source>Melt streams in and has filled {filled:.0f} % of the mould. Between the cold walls its long molecules are drawn out, and what touches a wall freezes like that.</source>
        <comment>text.filling</comment>
        <translation>Schmelze strömt ein und hat die Form zu {filled:.0f} % gefüllt. Zwischen den kalten Wänden werden ihre langen Moleküle gestreckt, und was eine Wand berührt, erstarrt so.</translation>
    </message>
    <message>
        <source>The mould is full. The thin bottom freezes first; the thick rim and ribs are still hot, and will pull at it when they shrink.</source>
        <comment>text.cooling</comment>
        <translation>Die Form ist voll. Der dünne Boden erstarrt zuerst; der dicke Rand und die Rippen sind noch heiß und ziehen an ihm, wenn sie schrumpfen.</translation>
    </message>
    <message>
        <source>Cold, and full of colour up to {nm:.0f} nm, {orders:.1f} orders: {flow:.0f} % of it are molecules that froze drawn out, {stress:.0f} % stress from thick parts that froze last.</source>
        <comment>text.cold</comment>
        <translation>Kalt und voller Farben bis {nm:.0f} nm, {orders:.1f} Ordnungen: {flow:.0f} % davon sind gestreckt erstarrte Moleküle, {stress:.0f} % Spannung von dicken Teilen, die zuletzt erstarrten.</translation>
    </message>
    <message>
        <source>At {warm:.0f} °C, below its glass transition at {tg:.0f} °C, the plastic is hard: of its stress {heat:.0f} % is left, of its molecules' stretch {stretch:.0f} %.</source>
        <comment>text.below</comment>
        <translation>Bei {warm:.0f} °C, unter seinem Glasübergang bei {tg:.0f} °C, ist der Kunststoff hart: Von der Spannung bleiben {heat:.0f} %, von der Streckung der Moleküle {stretch:.0f} %.</translation>
    </message>
    <message>
        <source>Above its glass transition at {tg:.0f} °C the plastic gives way: of its stress {heat:.0f} % is left, and of its molecules' stretch, which takes longer, {stretch:.0f} %.</source>
        <comment>text.above</comment>
        <translation>Über seinem Glasübergang bei {tg:.0f} °C gibt der Kunststoff nach: Von der Spannung bleiben {heat:.0f} %, von der Streckung der Moleküle, die länger braucht, {stretch:.0f} %.</translation>
    </message>
    <message>
        <source>The colours are gone: warmed for long enough, the molecules have coiled up and the stress has flowed away, as in glass that is annealed.</source>
        <comment>text.gone</comment>
        <translation>Die Farben sind fort: Lange genug erwärmt, haben sich die Moleküle verknäuelt, und die Spannung ist abgeflossen, wie in Glas, das gekühlt (entspannt) wird.</translation>
    </message>
    <message>
        <source>place along the dish</source>
        <comment>text.place</comment>
        <translation>Ort entlang der Schale</translation>
    </message>
    <message>
        <source>retardation</source>
        <comment>text.colour</comment>
        <translation>Gangunterschied</translation>
    </message>
    <message>
        <source>molecules</source>
        <comment>text.stretch</comment>
        <translation>Moleküle</translation>
    </message>
    <message>
        <source>stress</source>
        <comment>text.heat</comment>
        <translation>Spannung</translation>
    </message>
    <message>
        <source>both together</source>
        <comment>text.both</comment>
        <translation>beides zusammen</translation>
    </message>
    <message>
        <source>Warm it</source>
        <comment>action.warm_up</comment>
        <translation>Erwärmen</translation>
    </message>
    <message>
        <source>Plastic</source>
        <comment>setting.plastic</comment>
        <translation>Kunststoff</translation>
    </message>
    <message>
        <source>What it is moulded from.</source>
        <comment>setting.plastic.help</comment>
        <translation>Woraus sie gespritzt ist.</translation>
    </message>
    <message>
        <source>Polystyrene</source>
        <comment>choice.plastic.polystyrene</comment>
        <translation>Polystyrol</translation>
    </message>
    <message>
        <source>Thickness</source>
        <comment>setting.thickness_mm</comment>
        <translation>Dicke</translation>
    </message>
    <message>
        <source>Of the bottom.</source>
        <comment>setting.thickness_mm.help</comment>
        <translation>Des Bodens.</translation>
    </message>
    <message>
        <source>Rim and ribs</source>
        <comment>setting.rib_mm</comment>
        <translation>Rand und Rippen</translation>
    </message>
    <message>
        <source>Thickness of the rim and ribs.</source>
        <comment>setting.rib_mm.help</comment>
        <translation>Dicke von Rand und Rippen.</translation>
    </message>
    <message>
        <source>Gate</source>
        <comment>setting.gate</comment>
        <translation>Anguss</translation>
    </message>
    <message>
        <source>Where the melt comes in: lower left corner, left side or middle.</source>
        <comment>setting.gate.help</comment>
        <translation>Wo die Schmelze eintritt: Ecke unten links, linke Seite oder Mitte.</translation>
    </message>
    <message>
        <source>Corner</source>
        <comment>choice.gate.corner</comment>
        <translation>Ecke</translation>
    </message>
    <message>
        <source>Side</source>
        <comment>choice.gate.side</comment>
        <translation>Seite</translation>
    </message>
    <message>
        <source>Middle</source>
        <comment>choice.gate.middle</comment>
        <translation>Mitte</translation>
    </message>
    <message>
        <source>Melt</source>
        <comment>setting.melt_C</comment>
        <translation>Schmelze</translation>
    </message>
    <message>
        <source>Temperature of the melt.</source>
        <comment>setting.melt_C.help</comment>
        <translation>Temperatur der Schmelze.</translation>
    </message>
    <message>
        <source>Mould</source>
        <comment>setting.mould_C</comment>
        <translation>Form</translation>
    </message>
    <message>
        <source>Temperature of the mould's walls.</source>
        <comment>setting.mould_C.help</comment>
        <translation>Temperatur der Formwände.</translation>
    </message>
    <message>
        <source>Filled in</source>
        <comment>setting.fill_s</comment>
        <translation>Gefüllt in</translation>
    </message>
    <message>
        <source>Time to fill the mould.</source>
        <comment>setting.fill_s.help</comment>
        <translation>Zeit zum Füllen der Form.</translation>
    </message>
    <message>
        <source>Warm the cold dish to</source>
        <comment>setting.warm_C</comment>
        <translation>Kalte Schale erwärmen auf</translation>
    </message>
    <message>
        <source>Once the dish is cold it is put into warm air of this temperature.</source>
        <comment>setting.warm_C.help</comment>
        <translation>Ist die Schale kalt, kommt sie in warme Luft dieser Temperatur.</translation>
    </message>
    <message>
        <source>Warm for</source>
        <comment>setting.warm_min</comment>
        <translation>Erwärmen für</translation>
    </message>
    <message>
        <source>How long it lies in the warm air.</source>
        <comment>setting.warm_min.help</comment>
        <translation>Wie lange sie in der warmen Luft liegt.</translation>
    </message>
    <message>
        <source>Cast instead in</source>
        <comment>setting.as_glass</comment>
        <translation>Stattdessen gegossen aus</translation>
    </message>
    <message>
        <source>For the comparison with glass.</source>
        <comment>setting.as_glass.help</comment>
        <translation>Zum Vergleich mit Glas.</translation>
    </message>
    <message>
        <source>Borosilicate</source>
        <comment>choice.as_glass.borosilicate</comment>
        <translation>Borosilikat</translation>
    </message>
    <message>
        <source>Fused silica</source>
        <comment>choice.as_glass.fused-silica</comment>
        <translation>Kieselglas</translation>
    </message>
    <message>
        <source>Lead crystal</source>
        <comment>choice.as_glass.lead-crystal</comment>
        <translation>Bleikristall</translation>
    </message>
    <message>
        <source>Soda lime</source>
        <comment>choice.as_glass.soda-lime</comment>
        <translation>Kalknatron</translation>
    </message>
    <message>
        <source>Retardation peak</source>
        <comment>reading.retardation_peak_nm</comment>
        <translation>Größter Gangunterschied</translation>
    </message>
    <message>
        <source>Of the cold dish; until then now.</source>
        <comment>reading.retardation_peak_nm.help</comment>
        <translation>Der kalten Schale; bis dahin der jetzige Wert.</translation>
    </message>
    <message>
        <source>Retardation, 95 %</source>
        <comment>reading.retardation_p95_nm</comment>
        <translation>Gangunterschied, 95 %</translation>
    </message>
    <message>
        <source>Now: 95 % of the dish have less.</source>
        <comment>reading.retardation_p95_nm.help</comment>
        <translation>Jetzt: 95 % der Schale haben weniger.</translation>
    </message>
    <message>
        <source>Orders of colour</source>
        <comment>reading.orders</comment>
        <translation>Farbordnungen</translation>
    </message>
    <message>
        <source>Peak over 551 nm, the first violet.</source>
        <comment>reading.orders.help</comment>
        <translation>Größter Wert durch 551 nm, das erste Violett.</translation>
    </message>
    <message>
        <source>Drawn-out molecules</source>
        <comment>reading.flow_share_pct</comment>
        <translation>Gestreckte Moleküle</translation>
    </message>
    <message>
        <source>Their share of the colours.</source>
        <comment>reading.flow_share_pct.help</comment>
        <translation>Ihr Anteil an den Farben.</translation>
    </message>
    <message>
        <source>By molecules</source>
        <comment>reading.flow_peak_nm</comment>
        <translation>Durch Moleküle</translation>
    </message>
    <message>
        <source>Largest, now.</source>
        <comment>reading.flow_peak_nm.help</comment>
        <translation>Größter Wert, jetzt.</translation>
    </message>
    <message>
        <source>By stress</source>
        <comment>reading.stress_peak_nm</comment>
        <translation>Durch Spannung</translation>
    </message>
    <message>
        <source>Largest, now.</source>
        <comment>reading.stress_peak_nm.help</comment>
        <translation>Größter Wert, jetzt.</translation>
    </message>
    <message>
        <source>Colours left</source>
        <comment>reading.colour_left_pct</comment>
        <translation>Verbliebene Farben</translation>
    </message>
    <message>
        <source>Of the cold dish's mean, after warming.</source>
        <comment>reading.colour_left_pct.help</comment>
        <translation>Vom Mittel der kalten Schale, nach dem Erwärmen.</translation>
    </message>
    <message>
        <source>Stress left</source>
        <comment>reading.stress_left_pct</comment>
        <translation>Verbliebene Spannung</translation>
    </message>
    <message>
        <source>After warming.</source>
        <comment>reading.stress_left_pct.help</comment>
        <translation>Nach dem Erwärmen.</translation>
    </message>
    <message>
        <source>Molecules' stretch left</source>
        <comment>reading.stretch_left_pct</comment>
        <translation>Verbliebene Streckung</translation>
    </message>
    <message>
        <source>After warming.</source>
        <comment>reading.stretch_left_pct.help</comment>
        <translation>Nach dem Erwärmen.</translation>
    </message>
    <message>
        <source>Largest pull</source>
        <comment>reading.tension_MPa</comment>
        <translation>Größter Zug</translation>
    </message>
    <message>
        <source>Inside, of the frozen dish.</source>
        <comment>reading.tension_MPa.help</comment>
        <translation>Innen, in der erstarrten Schale.</translation>
    </message>
    <message>
        <source>Largest squeeze</source>
        <comment>reading.compression_MPa</comment>
        <translation>Größter Druck</translation>
    </message>
    <message>
        <source>Near the skin, of the frozen dish.</source>
        <comment>reading.compression_MPa.help</comment>
        <translation>Nahe der Oberfläche der erstarrten Schale.</translation>
    </message>
    <message>
        <source>Cut adds up to</source>
        <comment>reading.net_force_N</comment>
        <translation>Schnitt ergibt zusammen</translation>
    </message>
    <message>
        <source>Stress in an upright cut; nobody holds it.</source>
        <comment>reading.net_force_N.help</comment>
        <translation>Spannung in einem senkrechten Schnitt; niemand hält sie.</translation>
    </message>
    <message>
        <source>Fails first</source>
        <comment>reading.weak_corner</comment>
        <translation>Versagt zuerst</translation>
    </message>
    <message>
        <source>The corner that is pulled hardest.</source>
        <comment>reading.weak_corner.help</comment>
        <translation>Die Ecke, an der es am stärksten zieht.</translation>
    </message>
    <message>
        <source>lower left</source>
        <comment>value.weak_corner.lower left</comment>
        <translation>unten links</translation>
    </message>
    <message>
        <source>lower right</source>
        <comment>value.weak_corner.lower right</comment>
        <translation>unten rechts</translation>
    </message>
    <message>
        <source>upper left</source>
        <comment>value.weak_corner.upper left</comment>
        <translation>oben links</translation>
    </message>
    <message>
        <source>upper right</source>
        <comment>value.weak_corner.upper right</comment>
        <translation>oben rechts</translation>
    </message>
    <message>
        <source>hardly before another</source>
        <comment>value.weak_corner.hardly before another</comment>
        <translation>kaum vor einer anderen</translation>
    </message>
    <message>
        <source>Pull there</source>
        <comment>reading.weak_corner_MPa</comment>
        <translation>Zug dort</translation>
    </message>
    <message>
        <source>Filled</source>
        <comment>reading.filled_pct</comment>
        <translation>Gefüllt</translation>
    </message>
    <message>
        <source>Pressure at the gate</source>
        <comment>reading.pressure_MPa</comment>
        <translation>Druck am Anguss</translation>
    </message>
    <message>
        <source>Largest.</source>
        <comment>reading.pressure_MPa.help</comment>
        <translation>Größter Wert.</translation>
    </message>
    <message>
        <source>In glass it survives</source>
        <comment>reading.as_glass_survives</comment>
        <translation>In Glas bleibt sie heil</translation>
    </message>
    <message>
        <source>Cast, and cooled in the open air.</source>
        <comment>reading.as_glass_survives.help</comment>
        <translation>Gegossen und an der Luft gekühlt.</translation>
    </message>
    <message>
        <source>Pull in glass</source>
        <comment>reading.as_glass_tension_MPa</comment>
        <translation>Zug in Glas</translation>
    </message>
    <message>
        <source>Largest, mean through the thickness.</source>
        <comment>reading.as_glass_tension_MPa.help</comment>
        <translation>Größter Wert, Mittel durch die Dicke.</translation>
    </message>
    <message>
        <source>Odds of a break in glass</source>
        <comment>reading.as_glass_break_probability</comment>
        <translation>Bruchwahrscheinlichkeit in Glas</translation>
    </message>
    <message>
        <source>Energy stored in glass</source>
        <comment>reading.as_glass_energy_J</comment>
        <translation>In Glas gespeicherte Energie</translation>
    </message>
    <message>
        <source>Retardation in glass</source>
        <comment>reading.as_glass_retardation_nm</comment>
        <translation>Gangunterschied in Glas</translation>
    </message>
    <message>
        <source>Largest.</source>
        <comment>reading.as_glass_retardation_nm.help</comment>
        <translation>Größter Wert.</translation>
    </message>
    <message>
        <source>Retardation</source>
        <comment>reading.retardation_nm</comment>
        <translation>Gangunterschied</translation>
    </message>
</context>
<context>
    <name>scene.light-table</name>
    <message>
        <source>Light table</source>
        <comment>title</comment>
        <translation>Leuchttisch</translation>
    </message>
    <message>
        <source>plain</source>
        <comment>text.plain</comment>
        <translation>normal</translation>
    </message>
    <message>
        <source>laminated</source>
        <comment>text.laminated</comment>
        <translation>Verbundglas</translation>
    </message>
    <message>
        <source>toughened edge-on</source>
        <comment>text.toughened</comment>
        <translation>vorgespannt (Kante)</translation>
    </message>
    <message>
        <source>toughened face-on</source>
        <comment>text.toughened-face</comment>
        <translation>vorgespannt (Fläche)</translation>
    </message>
    <message>
        <source>bubble</source>
        <comment>text.bubble</comment>
        <translation>Kolben</translation>
    </message>
    <message>
        <source>cooling</source>
        <comment>text.cooling</comment>
        <translation>Abkühlen</translation>
    </message>
    <message>
        <source>dish</source>
        <comment>text.dish</comment>
        <translation>Schale</translation>
    </message>
    <message>
        <source>pour</source>
        <comment>text.pour</comment>
        <translation>Becher</translation>
    </message>
    <message>
        <source>push pull</source>
        <comment>text.push-pull</comment>
        <translation>Druck und Zug</translation>
    </message>
    <message>
        <source>ring</source>
        <comment>text.ring</comment>
        <translation>Flasche</translation>
    </message>
    <message>
        <source>touch</source>
        <comment>text.touch</comment>
        <translation>Berührung</translation>
    </message>
    <message>
        <source>under the glass</source>
        <comment>text.here</comment>
        <translation>unter dem Leseglas</translation>
    </message>
    <message>
        <source>retardation</source>
        <comment>text.retardation</comment>
        <translation>Gangunterschied</translation>
    </message>
    <message>
        <source>sample</source>
        <comment>text.sample</comment>
        <translation>Probe</translation>
    </message>
    <message>
        <source>The lamp alone: light that swings in all directions. There is nothing to see yet.</source>
        <comment>text.lamp</comment>
        <translation>Nur die Lampe: Licht, das in alle Richtungen schwingt. Noch ist nichts zu sehen.</translation>
    </message>
    <message>
        <source>One filter is in. It lets through what swings its way, which is half: the light is half as bright, and still there is nothing to see.</source>
        <comment>text.one_filter</comment>
        <translation>Ein Filter ist drin. Er lässt durch, was in seiner Richtung schwingt, also die Hälfte: Das Licht ist halb so hell, und noch immer ist nichts zu sehen.</translation>
    </message>
    <message>
        <source>The second filter stands across the first: it stops all that the first lets through. Now only what turns light between them can shine.</source>
        <comment>text.crossed</comment>
        <translation>Der zweite Filter steht quer zum ersten: Er hält alles auf, was der erste durchlässt. Jetzt leuchtet nur, was dazwischen Licht dreht.</translation>
    </message>
    <message>
        <source>All lie in one light, on one scale. The others come, one by one.</source>
        <comment>text.laying</comment>
        <translation>Alle liegen in einem Licht und in einem Maßstab. Die anderen kommen nacheinander.</translation>
    </message>
    <message>
        <source>Dark: {dark}. Coloured in places: {partly}; all over: {coloured}. Beyond some {limit:.0f} nm white light loses one colour after another.</source>
        <comment>text.sorted</comment>
        <translation>Dunkel: {dark}. Stellenweise farbig: {partly}; ganz farbig: {coloured}. Über etwa {limit:.0f} nm verliert weißes Licht eine Farbe nach der anderen.</translation>
    </message>
    <message>
        <source>Dark: {dark}. Grey: {grey}. Coloured in places: {partly}; all over: {coloured}. Beyond some {limit:.0f} nm white light loses one colour after another.</source>
        <comment>text.sorted_grey</comment>
        <translation>Dunkel: {dark}. Grau: {grey}. Stellenweise farbig: {partly}; ganz farbig: {coloured}. Über etwa {limit:.0f} nm verliert weißes Licht eine Farbe nach der anderen.</translation>
    </message>
    <message>
        <source>Dark: {dark}. Light that meets no stress on its way, or pull and squeeze alike, is stopped by the crossed filter.</source>
        <comment>text.all_dark</comment>
        <translation>Dunkel: {dark}. Licht, das auf seinem Weg keiner Spannung begegnet, oder gleich viel Zug wie Druck, hält der gekreuzte Filter auf.</translation>
    </message>
    <message>
        <source>Dark: {dark}. Grey: {grey}. Below some {limit:.0f} nm of retardation all colours of the white light still come through, some more, some less: grey and white.</source>
        <comment>text.no_colour</comment>
        <translation>Dunkel: {dark}. Grau: {grey}. Unter etwa {limit:.0f} nm Gangunterschied kommen noch alle Farben des weißen Lichts durch, manche mehr, manche weniger: grau und weiß.</translation>
    </message>
    <message>
        <source>The tint plate adds {plate:.0f} nm: without stress all is {colour}, and even a little turns it blue where it adds to the plate, yellow where it takes away.</source>
        <comment>text.tint</comment>
        <translation>Die Lambda-Platte fügt {plate:.0f} nm hinzu: Ohne Spannung ist alles {colour}. Schon wenig färbt es blau, wo es zur Platte hinzukommt, gelb, wo es davon abgeht.</translation>
    </message>
    <message>
        <source>Light of one colour has no colours to lose: there is but bright and dark, and each dark line is one wavelength, {wave:.0f} nm, of retardation more.</source>
        <comment>text.one_colour</comment>
        <translation>Einfarbiges Licht hat keine Farben zu verlieren: Es gibt nur hell und dunkel, und jede dunkle Linie ist eine Wellenlänge, {wave:.0f} nm, mehr Gangunterschied.</translation>
    </message>
    <message>
        <source>The filters stand along the samples. Stress along or across a sample does not turn such light: what was bright goes dark, whatever its stress.</source>
        <comment>text.along</comment>
        <translation>Die Filter stehen längs der Proben. Spannung längs oder quer zur Probe dreht solches Licht nicht: Was hell war, wird dunkel, wie groß die Spannung auch ist.</translation>
    </message>
    <message>
        <source>none</source>
        <comment>text.none</comment>
        <translation>nichts</translation>
    </message>
    <message>
        <source>Under the glass: {nm:.0f} nm, order {order:.2f}. In {path:g} mm of glass the pulls along and across then differ by {stress:.1f} MPa.</source>
        <comment>text.point_stress</comment>
        <translation>Unter dem Leseglas: {nm:.0f} nm, Ordnung {order:.2f}. In {path:g} mm Glas unterscheidet sich der Zug längs und quer dann um {stress:.1f} MPa.</translation>
    </message>
    <message>
        <source>Under the glass: {nm:.0f} nm, order {order:.2f}. How far the light goes through this wall differs from place to place, so colour alone tells no stress.</source>
        <comment>text.point_path</comment>
        <translation>Unter dem Leseglas: {nm:.0f} nm, Ordnung {order:.2f}. Wie weit das Licht durch diese Wand geht, ist überall anders; die Farbe allein sagt darum nichts über die Spannung.</translation>
    </message>
    <message>
        <source>Under the glass: {nm:.0f} nm, order {order:.2f}. Molecules that froze drawn out make most of it, so it is no measure of stress.</source>
        <comment>text.point_molecules</comment>
        <translation>Unter dem Leseglas: {nm:.0f} nm, Ordnung {order:.2f}. Das meiste kommt von gestreckt erstarrten Molekülen, es ist also kein Maß für Spannung.</translation>
    </message>
    <message>
        <source>Build it up</source>
        <comment>action.build_up</comment>
        <translation>Aufbauen</translation>
    </message>
    <message>
        <source>Samples</source>
        <comment>setting.samples</comment>
        <translation>Proben</translation>
    </message>
    <message>
        <source>What lies on the table, up to six; other scenes' pieces as they are by default.</source>
        <comment>setting.samples.help</comment>
        <translation>Was auf dem Tisch liegt, bis zu sechs; Stücke anderer Szenen in ihren Grundwerten.</translation>
    </message>
    <message>
        <source>Plain</source>
        <comment>choice.samples.plain</comment>
        <translation>Normal</translation>
    </message>
    <message>
        <source>Laminated</source>
        <comment>choice.samples.laminated</comment>
        <translation>Verbundglas</translation>
    </message>
    <message>
        <source>Toughened</source>
        <comment>choice.samples.toughened</comment>
        <translation>Vorgespannt (Kante)</translation>
    </message>
    <message>
        <source>Toughened face</source>
        <comment>choice.samples.toughened-face</comment>
        <translation>Vorgespannt (Fläche)</translation>
    </message>
    <message>
        <source>Bubble</source>
        <comment>choice.samples.bubble</comment>
        <translation>Kolben</translation>
    </message>
    <message>
        <source>Cooling</source>
        <comment>choice.samples.cooling</comment>
        <translation>Abkühlen</translation>
    </message>
    <message>
        <source>Dish</source>
        <comment>choice.samples.dish</comment>
        <translation>Schale</translation>
    </message>
    <message>
        <source>Pour</source>
        <comment>choice.samples.pour</comment>
        <translation>Becher</translation>
    </message>
    <message>
        <source>Push pull</source>
        <comment>choice.samples.push-pull</comment>
        <translation>Druck und Zug</translation>
    </message>
    <message>
        <source>Ring</source>
        <comment>choice.samples.ring</comment>
        <translation>Flasche</translation>
    </message>
    <message>
        <source>Touch</source>
        <comment>choice.samples.touch</comment>
        <translation>Berührung</translation>
    </message>
    <message>
        <source>Turn the polarizers</source>
        <comment>setting.turn_deg</comment>
        <translation>Polarisatoren drehen</translation>
    </message>
    <message>
        <source>Angle of the pair of polarizers.</source>
        <comment>setting.turn_deg.help</comment>
        <translation>Winkel des Polarisatorpaars.</translation>
    </message>
    <message>
        <source>Tint plate</source>
        <comment>setting.tint_plate</comment>
        <translation>Lambda-Platte</translation>
    </message>
    <message>
        <source>Shows small stress and its sign as colour.</source>
        <comment>setting.tint_plate.help</comment>
        <translation>Zeigt kleine Spannungen und ihr Vorzeichen als Farbe.</translation>
    </message>
    <message>
        <source>Lamp</source>
        <comment>setting.lamp</comment>
        <translation>Lampe</translation>
    </message>
    <message>
        <source>White light or one colour.</source>
        <comment>setting.lamp.help</comment>
        <translation>Weißes Licht oder eine Farbe.</translation>
    </message>
    <message>
        <source>Daylight</source>
        <comment>choice.lamp.daylight</comment>
        <translation>Tageslicht</translation>
    </message>
    <message>
        <source>Incandescent</source>
        <comment>choice.lamp.incandescent</comment>
        <translation>Glühlampe</translation>
    </message>
    <message>
        <source>White led</source>
        <comment>choice.lamp.white-led</comment>
        <translation>Weiße LED</translation>
    </message>
    <message>
        <source>Sodium</source>
        <comment>choice.lamp.sodium</comment>
        <translation>Natrium</translation>
    </message>
    <message>
        <source>Green</source>
        <comment>choice.lamp.green</comment>
        <translation>Grün</translation>
    </message>
    <message>
        <source>Built up to</source>
        <comment>setting.built</comment>
        <translation>Aufgebaut bis</translation>
    </message>
    <message>
        <source>The lamp alone, one filter, the crossed filter, then the samples.</source>
        <comment>setting.built.help</comment>
        <translation>Nur die Lampe, ein Filter, der gekreuzte Filter, dann die Proben.</translation>
    </message>
    <message>
        <source>Lamp</source>
        <comment>choice.built.lamp</comment>
        <translation>Lampe</translation>
    </message>
    <message>
        <source>One filter</source>
        <comment>choice.built.one-filter</comment>
        <translation>Ein Filter</translation>
    </message>
    <message>
        <source>Crossed</source>
        <comment>choice.built.crossed</comment>
        <translation>Gekreuzt</translation>
    </message>
    <message>
        <source>Samples</source>
        <comment>choice.built.samples</comment>
        <translation>Proben</translation>
    </message>
    <message>
        <source>Plain, median</source>
        <comment>reading.plain_retardation_median_nm</comment>
        <translation>Normal, Median</translation>
    </message>
    <message>
        <source>Half of it has less.</source>
        <comment>reading.plain_retardation_median_nm.help</comment>
        <translation>Die Hälfte davon hat weniger.</translation>
    </message>
    <message>
        <source>Plain, 95 %</source>
        <comment>reading.plain_retardation_p95_nm</comment>
        <translation>Normal, 95 %</translation>
    </message>
    <message>
        <source>95 % of it has less.</source>
        <comment>reading.plain_retardation_p95_nm.help</comment>
        <translation>95 % davon haben weniger.</translation>
    </message>
    <message>
        <source>Laminated, median</source>
        <comment>reading.laminated_retardation_median_nm</comment>
        <translation>Verbundglas, Median</translation>
    </message>
    <message>
        <source>Half of it has less.</source>
        <comment>reading.laminated_retardation_median_nm.help</comment>
        <translation>Die Hälfte davon hat weniger.</translation>
    </message>
    <message>
        <source>Laminated, 95 %</source>
        <comment>reading.laminated_retardation_p95_nm</comment>
        <translation>Verbundglas, 95 %</translation>
    </message>
    <message>
        <source>95 % of it has less.</source>
        <comment>reading.laminated_retardation_p95_nm.help</comment>
        <translation>95 % davon haben weniger.</translation>
    </message>
    <message>
        <source>Toughened edge-on, median</source>
        <comment>reading.toughened_retardation_median_nm</comment>
        <translation>Vorgespannt (Kante), Median</translation>
    </message>
    <message>
        <source>Half of it has less.</source>
        <comment>reading.toughened_retardation_median_nm.help</comment>
        <translation>Die Hälfte davon hat weniger.</translation>
    </message>
    <message>
        <source>Toughened edge-on, 95 %</source>
        <comment>reading.toughened_retardation_p95_nm</comment>
        <translation>Vorgespannt (Kante), 95 %</translation>
    </message>
    <message>
        <source>95 % of it has less.</source>
        <comment>reading.toughened_retardation_p95_nm.help</comment>
        <translation>95 % davon haben weniger.</translation>
    </message>
    <message>
        <source>Toughened face-on, median</source>
        <comment>reading.toughened_face_retardation_median_nm</comment>
        <translation>Vorgespannt (Fläche), Median</translation>
    </message>
    <message>
        <source>Half of it has less.</source>
        <comment>reading.toughened_face_retardation_median_nm.help</comment>
        <translation>Die Hälfte davon hat weniger.</translation>
    </message>
    <message>
        <source>Toughened face-on, 95 %</source>
        <comment>reading.toughened_face_retardation_p95_nm</comment>
        <translation>Vorgespannt (Fläche), 95 %</translation>
    </message>
    <message>
        <source>95 % of it has less.</source>
        <comment>reading.toughened_face_retardation_p95_nm.help</comment>
        <translation>95 % davon haben weniger.</translation>
    </message>
    <message>
        <source>Bubble, median</source>
        <comment>reading.bubble_retardation_median_nm</comment>
        <translation>Kolben, Median</translation>
    </message>
    <message>
        <source>Half of it has less.</source>
        <comment>reading.bubble_retardation_median_nm.help</comment>
        <translation>Die Hälfte davon hat weniger.</translation>
    </message>
    <message>
        <source>Bubble, 95 %</source>
        <comment>reading.bubble_retardation_p95_nm</comment>
        <translation>Kolben, 95 %</translation>
    </message>
    <message>
        <source>95 % of it has less.</source>
        <comment>reading.bubble_retardation_p95_nm.help</comment>
        <translation>95 % davon haben weniger.</translation>
    </message>
    <message>
        <source>Cooling, median</source>
        <comment>reading.cooling_retardation_median_nm</comment>
        <translation>Abkühlen, Median</translation>
    </message>
    <message>
        <source>Half of it has less.</source>
        <comment>reading.cooling_retardation_median_nm.help</comment>
        <translation>Die Hälfte davon hat weniger.</translation>
    </message>
    <message>
        <source>Cooling, 95 %</source>
        <comment>reading.cooling_retardation_p95_nm</comment>
        <translation>Abkühlen, 95 %</translation>
    </message>
    <message>
        <source>95 % of it has less.</source>
        <comment>reading.cooling_retardation_p95_nm.help</comment>
        <translation>95 % davon haben weniger.</translation>
    </message>
    <message>
        <source>Dish, median</source>
        <comment>reading.dish_retardation_median_nm</comment>
        <translation>Schale, Median</translation>
    </message>
    <message>
        <source>Half of it has less.</source>
        <comment>reading.dish_retardation_median_nm.help</comment>
        <translation>Die Hälfte davon hat weniger.</translation>
    </message>
    <message>
        <source>Dish, 95 %</source>
        <comment>reading.dish_retardation_p95_nm</comment>
        <translation>Schale, 95 %</translation>
    </message>
    <message>
        <source>95 % of it has less.</source>
        <comment>reading.dish_retardation_p95_nm.help</comment>
        <translation>95 % davon haben weniger.</translation>
    </message>
    <message>
        <source>Pour, median</source>
        <comment>reading.pour_retardation_median_nm</comment>
        <translation>Becher, Median</translation>
    </message>
    <message>
        <source>Half of it has less.</source>
        <comment>reading.pour_retardation_median_nm.help</comment>
        <translation>Die Hälfte davon hat weniger.</translation>
    </message>
    <message>
        <source>Pour, 95 %</source>
        <comment>reading.pour_retardation_p95_nm</comment>
        <translation>Becher, 95 %</translation>
    </message>
    <message>
        <source>95 % of it has less.</source>
        <comment>reading.pour_retardation_p95_nm.help</comment>
        <translation>95 % davon haben weniger.</translation>
    </message>
    <message>
        <source>Push pull, median</source>
        <comment>reading.push_pull_retardation_median_nm</comment>
        <translation>Druck und Zug, Median</translation>
    </message>
    <message>
        <source>Half of it has less.</source>
        <comment>reading.push_pull_retardation_median_nm.help</comment>
        <translation>Die Hälfte davon hat weniger.</translation>
    </message>
    <message>
        <source>Push pull, 95 %</source>
        <comment>reading.push_pull_retardation_p95_nm</comment>
        <translation>Druck und Zug, 95 %</translation>
    </message>
    <message>
        <source>95 % of it has less.</source>
        <comment>reading.push_pull_retardation_p95_nm.help</comment>
        <translation>95 % davon haben weniger.</translation>
    </message>
    <message>
        <source>Ring, median</source>
        <comment>reading.ring_retardation_median_nm</comment>
        <translation>Flasche, Median</translation>
    </message>
    <message>
        <source>Half of it has less.</source>
        <comment>reading.ring_retardation_median_nm.help</comment>
        <translation>Die Hälfte davon hat weniger.</translation>
    </message>
    <message>
        <source>Ring, 95 %</source>
        <comment>reading.ring_retardation_p95_nm</comment>
        <translation>Flasche, 95 %</translation>
    </message>
    <message>
        <source>95 % of it has less.</source>
        <comment>reading.ring_retardation_p95_nm.help</comment>
        <translation>95 % davon haben weniger.</translation>
    </message>
    <message>
        <source>Touch, median</source>
        <comment>reading.touch_retardation_median_nm</comment>
        <translation>Berührung, Median</translation>
    </message>
    <message>
        <source>Half of it has less.</source>
        <comment>reading.touch_retardation_median_nm.help</comment>
        <translation>Die Hälfte davon hat weniger.</translation>
    </message>
    <message>
        <source>Touch, 95 %</source>
        <comment>reading.touch_retardation_p95_nm</comment>
        <translation>Berührung, 95 %</translation>
    </message>
    <message>
        <source>95 % of it has less.</source>
        <comment>reading.touch_retardation_p95_nm.help</comment>
        <translation>95 % davon haben weniger.</translation>
    </message>
    <message>
        <source>Under the glass</source>
        <comment>reading.point_retardation_nm</comment>
        <translation>Unter dem Leseglas</translation>
    </message>
    <message>
        <source>Where the reading glass is held.</source>
        <comment>reading.point_retardation_nm.help</comment>
        <translation>Wo das Leseglas gehalten wird.</translation>
    </message>
    <message>
        <source>Order there</source>
        <comment>reading.point_order</comment>
        <translation>Ordnung dort</translation>
    </message>
    <message>
        <source>Over 565 nm, or over a one-colour lamp's wave.</source>
        <comment>reading.point_order.help</comment>
        <translation>Durch 565 nm oder die Wellenlänge einer einfarbigen Lampe.</translation>
    </message>
    <message>
        <source>Stress there</source>
        <comment>reading.point_stress_MPa</comment>
        <translation>Spannung dort</translation>
    </message>
    <message>
        <source>Difference of both principal stresses.</source>
        <comment>reading.point_stress_MPa.help</comment>
        <translation>Differenz der beiden Hauptspannungen.</translation>
    </message>
</context>
<context>
    <name>scene.pour</name>
    <message>
        <source>Boiling water</source>
        <comment>title</comment>
        <translation>Kochendes Wasser</translation>
    </message>
    <message>
        <source>Boiling water will go into a thick and a thin tumbler. Most people bet that the thin one cracks.</source>
        <comment>text.waiting</comment>
        <translation>Gleich kommt kochendes Wasser in einen dicken und einen dünnen Becher. Die meisten wetten, dass der dünne reißt.</translation>
    </message>
    <message>
        <source>Both tumblers have been warmed to {warm:.0f} °C. That is the whole trick: the water can hardly shock them now.</source>
        <comment>text.waiting_warm</comment>
        <translation>Beide Becher sind auf {warm:.0f} °C vorgewärmt. Das ist der ganze Trick: Das Wasser kann sie kaum noch schrecken.</translation>
    </message>
    <message>
        <source>The water warms the inside first. It wants to grow, the cold outside is pulled: thick {thick:.0f} MPa, thin {thin:.0f} MPa.</source>
        <comment>text.pouring</comment>
        <translation>Das Wasser wärmt zuerst das Innere. Es will wachsen, die kalte Außenseite gerät unter Zug: dick {thick:.0f} MPa, dünn {thin:.0f} MPa.</translation>
    </message>
    <message>
        <source>The water chills the inside. It wants to shrink and is pulled: thick {thick:.0f} MPa, thin {thin:.0f} MPa.</source>
        <comment>text.pouring_cold</comment>
        <translation>Das Wasser kühlt das Innere. Es will schrumpfen und gerät unter Zug: dick {thick:.0f} MPa, dünn {thin:.0f} MPa.</translation>
    </message>
    <message>
        <source>The thin wall is warm right through and calm again. The outside of the thick wall is still cold and pulled with {thick:.0f} MPa.</source>
        <comment>text.lagging</comment>
        <translation>Die dünne Wand ist durch und durch warm und wieder ruhig. Die dicke ist außen noch kalt und steht unter {thick:.0f} MPa Zug.</translation>
    </message>
    <message>
        <source>Bet lost: the thick one is {times:.0f} times likelier to crack. Its pull reached {thick:.0f} MPa, that of the thin one {thin:.0f} MPa.</source>
        <comment>text.thick_worse</comment>
        <translation>Wette verloren: Der dicke reißt {times:.0f}-mal so wahrscheinlich. Sein Zug erreichte {thick:.0f} MPa, der des dünnen {thin:.0f} MPa.</translation>
    </message>
    <message>
        <source>This time the thin one is {times:.0f} times likelier to crack: its pull reached {thin:.0f} MPa, that of the thick one {thick:.0f} MPa.</source>
        <comment>text.thin_worse</comment>
        <translation>Diesmal reißt der dünne {times:.0f}-mal so wahrscheinlich: Sein Zug erreichte {thin:.0f} MPa, der des dicken {thick:.0f} MPa.</translation>
    </message>
    <message>
        <source>Both hold alike: the pull reached {thick:.1f} MPa in the thick one and {thin:.1f} MPa in the thin one.</source>
        <comment>text.alike</comment>
        <translation>Beide halten gleich gut: Der Zug erreichte {thick:.1f} MPa im dicken und {thin:.1f} MPa im dünnen.</translation>
    </message>
    <message>
        <source>The thick one has cracked after {at:.0f} s: its cold outside was pulled with {pull:.0f} MPa, and the scratch did the rest.</source>
        <comment>text.thick_cracked</comment>
        <translation>Der dicke ist nach {at:.0f} s gerissen: Seine kalte Außenseite stand unter {pull:.0f} MPa Zug, und der Kratzer tat den Rest.</translation>
    </message>
    <message>
        <source>The thin one has cracked after {at:.0f} s: a pull of {pull:.0f} MPa was enough for this scratch.</source>
        <comment>text.thin_cracked</comment>
        <translation>Der dünne ist nach {at:.0f} s gerissen: {pull:.0f} MPa Zug genügten für diesen Kratzer.</translation>
    </message>
    <message>
        <source>Both have cracked: this scratch is too deep for so hot a pour.</source>
        <comment>text.both_cracked</comment>
        <translation>Beide sind gerissen: Dieser Kratzer ist zu tief für so heißes Wasser.</translation>
    </message>
    <message>
        <source>Warm them first</source>
        <comment>action.warm_first</comment>
        <translation>Erst vorwärmen</translation>
    </message>
    <message>
        <source>Glass</source>
        <comment>setting.glass</comment>
        <translation>Glas</translation>
    </message>
    <message>
        <source>Of both tumblers.</source>
        <comment>setting.glass.help</comment>
        <translation>Beider Becher.</translation>
    </message>
    <message>
        <source>Borosilicate</source>
        <comment>choice.glass.borosilicate</comment>
        <translation>Borosilikat</translation>
    </message>
    <message>
        <source>Fused silica</source>
        <comment>choice.glass.fused-silica</comment>
        <translation>Kieselglas</translation>
    </message>
    <message>
        <source>Lead crystal</source>
        <comment>choice.glass.lead-crystal</comment>
        <translation>Bleikristall</translation>
    </message>
    <message>
        <source>Soda lime</source>
        <comment>choice.glass.soda-lime</comment>
        <translation>Kalknatron</translation>
    </message>
    <message>
        <source>Thick wall</source>
        <comment>setting.thick_mm</comment>
        <translation>Dicke Wand</translation>
    </message>
    <message>
        <source>Wall and base of one tumbler.</source>
        <comment>setting.thick_mm.help</comment>
        <translation>Wand und Boden des einen Bechers.</translation>
    </message>
    <message>
        <source>Thin wall</source>
        <comment>setting.thin_mm</comment>
        <translation>Dünne Wand</translation>
    </message>
    <message>
        <source>Wall and base of the other.</source>
        <comment>setting.thin_mm.help</comment>
        <translation>Wand und Boden des anderen.</translation>
    </message>
    <message>
        <source>Water</source>
        <comment>setting.water_C</comment>
        <translation>Wasser</translation>
    </message>
    <message>
        <source>Temperature of the water as it is poured.</source>
        <comment>setting.water_C.help</comment>
        <translation>Temperatur des Wassers beim Eingießen.</translation>
    </message>
    <message>
        <source>Tumblers</source>
        <comment>setting.tumbler_C</comment>
        <translation>Becher</translation>
    </message>
    <message>
        <source>Of the glass before; warm it first.</source>
        <comment>setting.tumbler_C.help</comment>
        <translation>Des Glases davor; erst vorwärmen.</translation>
    </message>
    <message>
        <source>Pour for</source>
        <comment>setting.pour_s</comment>
        <translation>Eingießen in</translation>
    </message>
    <message>
        <source>Time in which they are filled.</source>
        <comment>setting.pour_s.help</comment>
        <translation>Zeit, in der sie gefüllt werden.</translation>
    </message>
    <message>
        <source>Worn</source>
        <comment>setting.worn</comment>
        <translation>Gebraucht</translation>
    </message>
    <message>
        <source>Used for years, or new.</source>
        <comment>setting.worn.help</comment>
        <translation>Jahre in Gebrauch oder neu.</translation>
    </message>
    <message>
        <source>Scratch</source>
        <comment>setting.scratch_um</comment>
        <translation>Kratzer</translation>
    </message>
    <message>
        <source>Depth of a long scratch outside, where it is worst; 0: none.</source>
        <comment>setting.scratch_um.help</comment>
        <translation>Tiefe eines langen Kratzers außen an der schlimmsten Stelle; 0: keiner.</translation>
    </message>
    <message>
        <source>Thick: pull outside</source>
        <comment>reading.thick_tension_MPa</comment>
        <translation>Dick: Zug außen</translation>
    </message>
    <message>
        <source>Largest over the run.</source>
        <comment>reading.thick_tension_MPa.help</comment>
        <translation>Größter Wert im Lauf.</translation>
    </message>
    <message>
        <source>Thin: pull outside</source>
        <comment>reading.thin_tension_MPa</comment>
        <translation>Dünn: Zug außen</translation>
    </message>
    <message>
        <source>Largest over the run.</source>
        <comment>reading.thin_tension_MPa.help</comment>
        <translation>Größter Wert im Lauf.</translation>
    </message>
    <message>
        <source>Thick: odds of a crack</source>
        <comment>reading.thick_break_probability</comment>
        <translation>Dick: Risswahrscheinlichkeit</translation>
    </message>
    <message>
        <source>Over the spread of flaws.</source>
        <comment>reading.thick_break_probability.help</comment>
        <translation>Über die Streuung der Fehlstellen.</translation>
    </message>
    <message>
        <source>Thin: odds of a crack</source>
        <comment>reading.thin_break_probability</comment>
        <translation>Dünn: Risswahrscheinlichkeit</translation>
    </message>
    <message>
        <source>Over the spread of flaws.</source>
        <comment>reading.thin_break_probability.help</comment>
        <translation>Über die Streuung der Fehlstellen.</translation>
    </message>
    <message>
        <source>Thick: pull inside</source>
        <comment>reading.thick_inside_MPa</comment>
        <translation>Dick: Zug innen</translation>
    </message>
    <message>
        <source>Largest over the run; water side.</source>
        <comment>reading.thick_inside_MPa.help</comment>
        <translation>Größter Wert im Lauf; Wasserseite.</translation>
    </message>
    <message>
        <source>Thin: pull inside</source>
        <comment>reading.thin_inside_MPa</comment>
        <translation>Dünn: Zug innen</translation>
    </message>
    <message>
        <source>Largest over the run; water side.</source>
        <comment>reading.thin_inside_MPa.help</comment>
        <translation>Größter Wert im Lauf; Wasserseite.</translation>
    </message>
    <message>
        <source>Thick over thin</source>
        <comment>reading.odds_ratio</comment>
        <translation>Dick zu dünn</translation>
    </message>
    <message>
        <source>How many times likelier the thick one cracks.</source>
        <comment>reading.odds_ratio.help</comment>
        <translation>Wievielmal wahrscheinlicher der dicke reißt.</translation>
    </message>
    <message>
        <source>Thick: K over K_IC</source>
        <comment>reading.thick_intensity_ratio</comment>
        <translation>Dick: K zu K_IC</translation>
    </message>
    <message>
        <source>Of the stated flaw, at its peak.</source>
        <comment>reading.thick_intensity_ratio.help</comment>
        <translation>Der angegebenen Fehlstelle, größter Wert.</translation>
    </message>
    <message>
        <source>Thin: K over K_IC</source>
        <comment>reading.thin_intensity_ratio</comment>
        <translation>Dünn: K zu K_IC</translation>
    </message>
    <message>
        <source>Of the stated flaw, at its peak.</source>
        <comment>reading.thin_intensity_ratio.help</comment>
        <translation>Der angegebenen Fehlstelle, größter Wert.</translation>
    </message>
    <message>
        <source>Thick cracks</source>
        <comment>reading.thick_breaks</comment>
        <translation>Dicker reißt</translation>
    </message>
    <message>
        <source>The verdict for the stated flaw.</source>
        <comment>reading.thick_breaks.help</comment>
        <translation>Das Urteil für die angegebene Fehlstelle.</translation>
    </message>
    <message>
        <source>Thin cracks</source>
        <comment>reading.thin_breaks</comment>
        <translation>Dünner reißt</translation>
    </message>
    <message>
        <source>The verdict for the stated flaw.</source>
        <comment>reading.thin_breaks.help</comment>
        <translation>Das Urteil für die angegebene Fehlstelle.</translation>
    </message>
    <message>
        <source>Water in the thick one</source>
        <comment>reading.thick_water_C</comment>
        <translation>Wasser im dicken</translation>
    </message>
    <message>
        <source>Water in the thin one</source>
        <comment>reading.thin_water_C</comment>
        <translation>Wasser im dünnen</translation>
    </message>
    <message>
        <source>Retardation peak</source>
        <comment>reading.retardation_peak_nm</comment>
        <translation>Größter Gangunterschied</translation>
    </message>
    <message>
        <source>Largest over the run.</source>
        <comment>reading.retardation_peak_nm.help</comment>
        <translation>Größter Wert im Lauf.</translation>
    </message>
    <message>
        <source>Thin, outside</source>
        <comment>reading.thin_outside_MPa</comment>
        <translation>Dünn, außen</translation>
    </message>
    <message>
        <source>Thick, inside</source>
        <comment>reading.thick_wall_MPa</comment>
        <translation>Dick, innen</translation>
    </message>
    <message>
        <source>Thick, outside</source>
        <comment>reading.thick_outside_MPa</comment>
        <translation>Dick, außen</translation>
    </message>
    <message>
        <source>Thin, inside</source>
        <comment>reading.thin_wall_MPa</comment>
        <translation>Dünn, innen</translation>
    </message>
</context>
<context>
    <name>scene.push-pull</name>
    <message>
        <source>Push and pull</source>
        <comment>title</comment>
        <translation>Drücken und Ziehen</translation>
    </message>
    <message>
        <source>Nobody touches it: there is no stress in it, and it stays dark.</source>
        <comment>text.untouched</comment>
        <translation>Niemand berührt ihn: Es ist keine Spannung darin, und er bleibt dunkel.</translation>
    </message>
    <message>
        <source>The hands pull with {force:.0f} N, and everywhere in the bar all the pull adds up to just that: {net:.0f} N.</source>
        <comment>text.pulled</comment>
        <translation>Die Hände ziehen mit {force:.0f} N, und überall im Stab ergibt aller Zug zusammen genau das: {net:.0f} N.</translation>
    </message>
    <message>
        <source>The hands pull with {force:.0f} N, and all the pull in the bar adds up to just that. It opens the small cracks by {gape:.2f} µm, {percent:.0f} % of the way to a break.</source>
        <comment>text.pulled_crack</comment>
        <translation>Die Hände ziehen mit {force:.0f} N, und aller Zug im Stab ergibt zusammen genau das. Er öffnet die kleinen Risse um {gape:.2f} µm, {percent:.0f} % des Wegs zum Bruch.</translation>
    </message>
    <message>
        <source>The hands squeeze with {force:.0f} N, and everywhere in the bar all the squeeze adds up to just that: {net:.0f} N.</source>
        <comment>text.squeezed</comment>
        <translation>Die Hände drücken mit {force:.0f} N, und überall im Stab ergibt aller Druck zusammen genau das: {net:.0f} N.</translation>
    </message>
    <message>
        <source>The hands squeeze with {force:.0f} N, and all the squeeze in the bar adds up to just that. It presses the small cracks shut.</source>
        <comment>text.squeezed_crack</comment>
        <translation>Die Hände drücken mit {force:.0f} N, und aller Druck im Stab ergibt zusammen genau das. Er presst die kleinen Risse zu.</translation>
    </message>
    <message>
        <source>Below it is pulled with {pull:.0f} N in all, above it is squeezed with {squeeze:.0f} N: pull and squeeze add up to zero.</source>
        <comment>text.bent</comment>
        <translation>Unten herrschen insgesamt {pull:.0f} N Zug, oben {squeeze:.0f} N Druck: Zug und Druck ergeben zusammen null.</translation>
    </message>
    <message>
        <source>Below it is pulled with {pull:.0f} N in all, above it is squeezed with {squeeze:.0f} N: together zero. The crack below opens by {gape:.2f} µm, {percent:.0f} % of the way to a break; the one above is pressed shut.</source>
        <comment>text.bent_crack</comment>
        <translation>Unten herrschen insgesamt {pull:.0f} N Zug, oben {squeeze:.0f} N Druck: zusammen null. Der Riss unten öffnet sich um {gape:.2f} µm, {percent:.0f} % des Wegs zum Bruch; der obere wird zugepresst.</translation>
    </message>
    <message>
        <source>Squeezed from above and below, the disk is pulled apart sideways: across the upright cut {pull:.0f} N of pull and {squeeze:.0f} N of squeeze add up to zero.</source>
        <comment>text.disk</comment>
        <translation>Von oben und unten gedrückt, wird die Scheibe seitlich auseinandergezogen: Über den senkrechten Schnitt ergeben {pull:.0f} N Zug und {squeeze:.0f} N Druck zusammen null.</translation>
    </message>
    <message>
        <source>Squeezed from above and below, the disk is pulled apart sideways: the upright crack opens by {gape:.2f} µm, {percent:.0f} % of the way to a break; the lying one is pressed shut.</source>
        <comment>text.disk_crack</comment>
        <translation>Von oben und unten gedrückt, wird die Scheibe seitlich auseinandergezogen: Der senkrechte Riss öffnet sich um {gape:.2f} µm, {percent:.0f} % des Wegs zum Bruch; der liegende wird zugepresst.</translation>
    </message>
    <message>
        <source>The plate is hot and soft: what pulls in it flows away at once.</source>
        <comment>text.hot</comment>
        <translation>Die Platte ist heiß und weich: Was in ihr zieht, fließt sofort ab.</translation>
    </message>
    <message>
        <source>The skin is cooler than the middle and at the moment {does} with {skin:.0f} MPa; pull and squeeze add up to zero all the time.</source>
        <comment>text.cooling</comment>
        <translation>Die Oberfläche ist kühler als die Mitte und steht im Augenblick unter {skin:.0f} MPa {does}; Zug und Druck ergeben zusammen immer null.</translation>
    </message>
    <message>
        <source>Nobody touches it, and still its skin is squeezed with {skin:.0f} MPa and its middle pulled with {middle:.0f} MPa: {pull:.0f} N against {squeeze:.0f} N, together zero.</source>
        <comment>text.locked</comment>
        <translation>Niemand berührt sie, und doch steht die Oberfläche unter {skin:.0f} MPa Druck und die Mitte unter {middle:.0f} MPa Zug: {pull:.0f} N gegen {squeeze:.0f} N, zusammen null.</translation>
    </message>
    <message>
        <source>Nobody touches it, and still its skin is squeezed with {skin:.0f} MPa and its middle pulled with {middle:.0f} MPa, together zero. The squeeze presses the cracks shut.</source>
        <comment>text.locked_crack</comment>
        <translation>Niemand berührt sie, und doch steht die Oberfläche unter {skin:.0f} MPa Druck und die Mitte unter {middle:.0f} MPa Zug, zusammen null. Der Druck presst die Risse zu.</translation>
    </message>
    <message>
        <source>The cracks have got through the squeezed skin into the pull behind it: {percent:.0f} % of the way to a break, and nobody touches it.</source>
        <comment>text.locked_reached</comment>
        <translation>Die Risse sind durch die Druckschicht in den Zug dahinter gelangt: {percent:.0f} % des Wegs zum Bruch, und niemand berührt sie.</translation>
    </message>
    <message>
        <source>The crack ran, {at:.1f} s after the start: two parts, and with nothing to hold on to the stress is gone.</source>
        <comment>text.broke</comment>
        <translation>Der Riss lief {at:.1f} s nach dem Start durch: zwei Teile, und ohne Halt ist die Spannung fort.</translation>
    </message>
    <message>
        <source>The crack reached the pull inside and ran: two parts, each with its own pull and squeeze, and in each they add up to zero.</source>
        <comment>text.broke_slice</comment>
        <translation>Der Riss erreichte den Zug im Inneren und lief durch: zwei Teile, jeder mit eigenem Zug und Druck, und in jedem ergeben sie zusammen null.</translation>
    </message>
    <message>
        <source>It broke at an ordinary scratch, {at:.1f} s after the start: such a pull breaks most pieces that have been in use.</source>
        <comment>text.broke_flaw</comment>
        <translation>Er brach {at:.1f} s nach dem Start an einem gewöhnlichen Kratzer: Solcher Zug bricht die meisten gebrauchten Stücke.</translation>
    </message>
    <message>
        <source>Seen from the side</source>
        <comment>text.section_title</comment>
        <translation>Von der Seite gesehen</translation>
    </message>
    <message>
        <source>along the bar</source>
        <comment>text.along</comment>
        <translation>entlang des Stabs</translation>
    </message>
    <message>
        <source>sideways</source>
        <comment>text.sideways</comment>
        <translation>seitwärts</translation>
    </message>
    <message>
        <source>stress in the cut</source>
        <comment>text.across</comment>
        <translation>Spannung im Schnitt</translation>
    </message>
    <message>
        <source>height in the cut</source>
        <comment>text.height</comment>
        <translation>Höhe im Schnitt</translation>
    </message>
    <message>
        <source>stress</source>
        <comment>text.stress</comment>
        <translation>Spannung</translation>
    </message>
    <message>
        <source>all added up, shared out evenly</source>
        <comment>text.mean</comment>
        <translation>alles zusammen, gleichmäßig verteilt</translation>
    </message>
    <message>
        <source>Let go</source>
        <comment>action.let_go</comment>
        <translation>Loslassen</translation>
    </message>
    <message>
        <source>What is done</source>
        <comment>setting.kind</comment>
        <translation>Was geschieht</translation>
    </message>
    <message>
        <source>A bar squeezed, pulled, bent over four or three pads; a disk squeezed across; or a toughened slice that nobody touches.</source>
        <comment>setting.kind.help</comment>
        <translation>Ein Stab wird gedrückt, gezogen, über vier oder drei Auflagen gebogen; eine Scheibe quer gedrückt; oder ein vorgespannter Streifen, den niemand berührt.</translation>
    </message>
    <message>
        <source>Bar squeezed</source>
        <comment>choice.kind.bar-squeezed</comment>
        <translation>Stab gedrückt</translation>
    </message>
    <message>
        <source>Bar pulled</source>
        <comment>choice.kind.bar-pulled</comment>
        <translation>Stab gezogen</translation>
    </message>
    <message>
        <source>Bar bent</source>
        <comment>choice.kind.bar-bent</comment>
        <translation>Stab gebogen</translation>
    </message>
    <message>
        <source>Bar bent three</source>
        <comment>choice.kind.bar-bent-three</comment>
        <translation>Stab gebogen, drei Auflagen</translation>
    </message>
    <message>
        <source>Disk squeezed</source>
        <comment>choice.kind.disk-squeezed</comment>
        <translation>Scheibe gedrückt</translation>
    </message>
    <message>
        <source>Locked in</source>
        <comment>choice.kind.locked-in</comment>
        <translation>Eingeschlossen</translation>
    </message>
    <message>
        <source>Material</source>
        <comment>setting.material</comment>
        <translation>Werkstoff</translation>
    </message>
    <message>
        <source>What it is made of.</source>
        <comment>setting.material.help</comment>
        <translation>Woraus es besteht.</translation>
    </message>
    <message>
        <source>Borosilicate</source>
        <comment>choice.material.borosilicate</comment>
        <translation>Borosilikat</translation>
    </message>
    <message>
        <source>Fused silica</source>
        <comment>choice.material.fused-silica</comment>
        <translation>Kieselglas</translation>
    </message>
    <message>
        <source>Lead crystal</source>
        <comment>choice.material.lead-crystal</comment>
        <translation>Bleikristall</translation>
    </message>
    <message>
        <source>Polystyrene</source>
        <comment>choice.material.polystyrene</comment>
        <translation>Polystyrol</translation>
    </message>
    <message>
        <source>Soda lime</source>
        <comment>choice.material.soda-lime</comment>
        <translation>Kalknatron</translation>
    </message>
    <message>
        <source>Force of the hands</source>
        <comment>setting.load</comment>
        <translation>Kraft der Hände</translation>
    </message>
    <message>
        <source>Grows to this bit by bit; a piece with locked-in stress is not touched.</source>
        <comment>setting.load.help</comment>
        <translation>Wächst nach und nach bis hierher; ein Stück mit Eigenspannung wird nicht berührt.</translation>
    </message>
    <message>
        <source>Thickness</source>
        <comment>setting.thickness_mm</comment>
        <translation>Dicke</translation>
    </message>
    <message>
        <source>Path of the light.</source>
        <comment>setting.thickness_mm.help</comment>
        <translation>Weg des Lichts.</translation>
    </message>
    <message>
        <source>Small cracks</source>
        <comment>setting.crack_mm</comment>
        <translation>Kleine Risse</translation>
    </message>
    <message>
        <source>Length of two small cracks, from the middle of both edges (in a disk: from its middle to either side); 0: none. Too small to show in the colours.</source>
        <comment>setting.crack_mm.help</comment>
        <translation>Länge zweier kleiner Risse, von der Mitte beider Ränder aus (in einer Scheibe: von ihrer Mitte nach beiden Seiten); 0: keine. Zu klein, um in den Farben aufzufallen.</translation>
    </message>
    <message>
        <source>Jets</source>
        <comment>setting.jet_W_m2K</comment>
        <translation>Düsen</translation>
    </message>
    <message>
        <source>How hard the slice's plate was blown with cold air; for locked-in stress only.</source>
        <comment>setting.jet_W_m2K.help</comment>
        <translation>Wie stark die Platte des Streifens mit kalter Luft angeblasen wurde; nur für Eigenspannung.</translation>
    </message>
    <message>
        <source>Largest pull</source>
        <comment>reading.tension_MPa</comment>
        <translation>Größter Zug</translation>
    </message>
    <message>
        <source>In the cut; of a disk in its middle.</source>
        <comment>reading.tension_MPa.help</comment>
        <translation>Im Schnitt; bei einer Scheibe in ihrer Mitte.</translation>
    </message>
    <message>
        <source>Largest squeeze</source>
        <comment>reading.compression_MPa</comment>
        <translation>Größter Druck</translation>
    </message>
    <message>
        <source>In the cut; of a disk in its middle.</source>
        <comment>reading.compression_MPa.help</comment>
        <translation>Im Schnitt; bei einer Scheibe in ihrer Mitte.</translation>
    </message>
    <message>
        <source>Cut adds up to</source>
        <comment>reading.net_force_N</comment>
        <translation>Schnitt ergibt zusammen</translation>
    </message>
    <message>
        <source>All stress in the cut: the hands' or zero.</source>
        <comment>reading.net_force_N.help</comment>
        <translation>Alle Spannung im Schnitt: die der Hände oder null.</translation>
    </message>
    <message>
        <source>Half is turned by</source>
        <comment>reading.net_moment_Nm</comment>
        <translation>Eine Hälfte dreht mit</translation>
    </message>
    <message>
        <source>By the cut and the hands together.</source>
        <comment>reading.net_moment_Nm.help</comment>
        <translation>Durch Schnitt und Hände zusammen.</translation>
    </message>
    <message>
        <source>Cut bends with</source>
        <comment>reading.bending_moment_Nm</comment>
        <translation>Schnitt biegt mit</translation>
    </message>
    <message>
        <source>Balanced by the hands on each half.</source>
        <comment>reading.bending_moment_Nm.help</comment>
        <translation>Von den Händen an jeder Hälfte ausgeglichen.</translation>
    </message>
    <message>
        <source>All pull in the cut</source>
        <comment>reading.pulled_N</comment>
        <translation>Aller Zug im Schnitt</translation>
    </message>
    <message>
        <source>All squeeze in the cut</source>
        <comment>reading.squeezed_N</comment>
        <translation>Aller Druck im Schnitt</translation>
    </message>
    <message>
        <source>Hands pull with</source>
        <comment>reading.hands_N</comment>
        <translation>Hände ziehen mit</translation>
    </message>
    <message>
        <source>A squeeze is negative.</source>
        <comment>reading.hands_N.help</comment>
        <translation>Druck ist negativ.</translation>
    </message>
    <message>
        <source>Retardation peak</source>
        <comment>reading.retardation_peak_nm</comment>
        <translation>Größter Gangunterschied</translation>
    </message>
    <message>
        <source>Anywhere, over the run.</source>
        <comment>reading.retardation_peak_nm.help</comment>
        <translation>Irgendwo, im ganzen Lauf.</translation>
    </message>
    <message>
        <source>Retardation, middle</source>
        <comment>reading.retardation_middle_nm</comment>
        <translation>Gangunterschied, Mitte</translation>
    </message>
    <message>
        <source>Largest in the cut.</source>
        <comment>reading.retardation_middle_nm.help</comment>
        <translation>Größter Wert im Schnitt.</translation>
    </message>
    <message>
        <source>K over K_IC</source>
        <comment>reading.intensity_ratio</comment>
        <translation>K zu K_IC</translation>
    </message>
    <message>
        <source>Of the crack that is pulled hardest.</source>
        <comment>reading.intensity_ratio.help</comment>
        <translation>Des am stärksten gezogenen Risses.</translation>
    </message>
    <message>
        <source>Crack opens by</source>
        <comment>reading.crack_gape_um</comment>
        <translation>Riss öffnet sich um</translation>
    </message>
    <message>
        <source>The one that is pulled hardest.</source>
        <comment>reading.crack_gape_um.help</comment>
        <translation>Der am stärksten gezogene.</translation>
    </message>
    <message>
        <source>Breaks</source>
        <comment>reading.breaks</comment>
        <translation>Bricht</translation>
    </message>
    <message>
        <source>The small crack ran, or a pull that breaks most pieces.</source>
        <comment>reading.breaks.help</comment>
        <translation>Der kleine Riss lief, oder ein Zug, der die meisten Stücke bricht.</translation>
    </message>
    <message>
        <source>Odds of a break</source>
        <comment>reading.break_probability</comment>
        <translation>Bruchwahrscheinlichkeit</translation>
    </message>
    <message>
        <source>Without the cracks: handled surfaces.</source>
        <comment>reading.break_probability.help</comment>
        <translation>Ohne die Risse: benutzte Oberflächen.</translation>
    </message>
    <message>
        <source>All pull</source>
        <comment>reading.pulled_N</comment>
        <translation>Aller Zug</translation>
    </message>
    <message>
        <source>All squeeze</source>
        <comment>reading.squeezed_N</comment>
        <translation>Aller Druck</translation>
    </message>
    <message>
        <source>Together</source>
        <comment>reading.net_force_N</comment>
        <translation>Zusammen</translation>
    </message>
    <message>
        <source>Retardation</source>
        <comment>reading.retardation_nm</comment>
        <translation>Gangunterschied</translation>
    </message>
</context>
<context>
    <name>scene.ring</name>
    <message>
        <source>Ring and drop</source>
        <comment>title</comment>
        <translation>Ring und Tropfen</translation>
    </message>
    <message>
        <source>The bottle is evenly cool and free of stress: between the polarizers it stays dark.</source>
        <comment>text.cold</comment>
        <translation>Die Flasche ist überall gleich kühl und spannungsfrei: Zwischen den Polarisatoren bleibt sie dunkel.</translation>
    </message>
    <message>
        <source>The ring swells by {swell:.0f} µm. Cold glass on both sides holds it back, so it is squeezed around with {squeeze:.0f} MPa.</source>
        <comment>text.heating</comment>
        <translation>Der Ring dehnt sich um {swell:.0f} µm. Kaltes Glas zu beiden Seiten hält ihn auf, so gerät er ringsum unter {squeeze:.0f} MPa Druck.</translation>
    </message>
    <message>
        <source>The flame is off. The outside of the ring is still squeezed along the bottle with {squeeze:.0f} MPa, until the heat has soaked in.</source>
        <comment>text.evening</comment>
        <translation>Die Flamme ist aus. Außen steht der Ring längs der Flasche noch unter {squeeze:.0f} MPa Druck, bis die Wärme eingedrungen ist.</translation>
    </message>
    <message>
        <source>The flame is off. The skin cools first and is now pulled along the bottle with {pull:.0f} MPa.</source>
        <comment>text.soaking</comment>
        <translation>Die Flamme ist aus. Die Oberfläche kühlt zuerst und steht nun längs der Flasche unter {pull:.0f} MPa Zug.</translation>
    </message>
    <message>
        <source>The drop chills the skin. It wants to shrink, the hot glass below does not let it: a pull of {pull:.0f} MPa, {percent:.0f} % of what the flaw needs.</source>
        <comment>text.chilled</comment>
        <translation>Der Tropfen kühlt die Oberfläche. Sie will schrumpfen, das heiße Glas darunter lässt sie nicht: {pull:.0f} MPa Zug, {percent:.0f} % von dem, was die Fehlstelle braucht.</translation>
    </message>
    <message>
        <source>The crack is running through the wall: {depth:.1f} of {wall:.1f} mm.</source>
        <comment>text.cracking</comment>
        <translation>Der Riss läuft durch die Wand: {depth:.1f} von {wall:.1f} mm.</translation>
    </message>
    <message>
        <source>Cracked off {after:.2f} s after the drop, {offset:.1f} mm from the middle of the ring. The pieces let go of most of their stress.</source>
        <comment>text.cracked_drop</comment>
        <translation>Abgesprengt {after:.2f} s nach dem Tropfen, {offset:.1f} mm neben der Ringmitte. Die Teile haben fast alle Spannung verloren.</translation>
    </message>
    <message>
        <source>Cracked off {after:.2f} s after the drop, in the middle of the ring. The pieces let go of most of their stress.</source>
        <comment>text.cracked_drop_middle</comment>
        <translation>Abgesprengt {after:.2f} s nach dem Tropfen, in der Mitte des Rings. Die Teile haben fast alle Spannung verloren.</translation>
    </message>
    <message>
        <source>It cracked by itself at {at:.1f} s, in the middle of the ring: heat alone pulled hard enough.</source>
        <comment>text.cracked_alone_middle</comment>
        <translation>Sie riss bei {at:.1f} s von selbst, in der Mitte des Rings: Die Wärme allein zog stark genug.</translation>
    </message>
    <message>
        <source>It cracked by itself at {at:.1f} s, {offset:.1f} mm from the middle of the ring: heat alone pulled hard enough.</source>
        <comment>text.cracked_alone</comment>
        <translation>Sie riss bei {at:.1f} s von selbst, {offset:.1f} mm neben der Ringmitte: Die Wärme allein zog stark genug.</translation>
    </message>
    <message>
        <source>The ring is too hot: above about {limit:.0f} °C the drop floats on its own steam and rolls off, so it hardly cools the glass.</source>
        <comment>text.too_hot</comment>
        <translation>Der Ring ist zu heiß: Über etwa {limit:.0f} °C schwebt der Tropfen auf seinem eigenen Dampf, rollt ab und kühlt das Glas kaum.</translation>
    </message>
    <message>
        <source>It holds: the pull reached {percent:.0f} % of what the flaw needs to become a crack.</source>
        <comment>text.held</comment>
        <translation>Sie hält: Der Zug erreichte {percent:.0f} % von dem, was die Fehlstelle braucht, um ein Riss zu werden.</translation>
    </message>
    <message>
        <source>Everything cools together, the stress fades and the picture goes dark again.</source>
        <comment>text.fading</comment>
        <translation>Alles kühlt gemeinsam ab, die Spannung lässt nach, und das Bild wird wieder dunkel.</translation>
    </message>
    <message>
        <source>The ring is hot enough to flow. Stress is running out of it now and will come back, the other way round, as it cools.</source>
        <comment>text.soft</comment>
        <translation>Der Ring ist heiß genug zum Fließen. Jetzt fließt Spannung ab; beim Abkühlen kehrt sie umgekehrt wieder.</translation>
    </message>
    <message>
        <source>The ring had begun to flow. {stress:.0f} MPa of stress stay locked in although it is cold again.</source>
        <comment>text.locked</comment>
        <translation>Der Ring hatte begonnen zu fließen. {stress:.0f} MPa Spannung bleiben eingeschlossen, obwohl er wieder kalt ist.</translation>
    </message>
    <message>
        <source>along the bottle</source>
        <comment>text.along</comment>
        <translation>entlang der Flasche</translation>
    </message>
    <message>
        <source>Drop now</source>
        <comment>action.drop_now</comment>
        <translation>Jetzt tropfen</translation>
    </message>
    <message>
        <source>Flame out now</source>
        <comment>action.flame_out</comment>
        <translation>Flamme jetzt aus</translation>
    </message>
    <message>
        <source>Glass</source>
        <comment>setting.glass</comment>
        <translation>Glas</translation>
    </message>
    <message>
        <source>What it is made of.</source>
        <comment>setting.glass.help</comment>
        <translation>Woraus es besteht.</translation>
    </message>
    <message>
        <source>Borosilicate</source>
        <comment>choice.glass.borosilicate</comment>
        <translation>Borosilikat</translation>
    </message>
    <message>
        <source>Fused silica</source>
        <comment>choice.glass.fused-silica</comment>
        <translation>Kieselglas</translation>
    </message>
    <message>
        <source>Lead crystal</source>
        <comment>choice.glass.lead-crystal</comment>
        <translation>Bleikristall</translation>
    </message>
    <message>
        <source>Soda lime</source>
        <comment>choice.glass.soda-lime</comment>
        <translation>Kalknatron</translation>
    </message>
    <message>
        <source>Diameter</source>
        <comment>setting.outer_diameter_mm</comment>
        <translation>Durchmesser</translation>
    </message>
    <message>
        <source>Outer diameter of the bottle's body.</source>
        <comment>setting.outer_diameter_mm.help</comment>
        <translation>Außendurchmesser des Flaschenkörpers.</translation>
    </message>
    <message>
        <source>Wall</source>
        <comment>setting.wall_mm</comment>
        <translation>Wand</translation>
    </message>
    <message>
        <source>Thickness of the wall.</source>
        <comment>setting.wall_mm.help</comment>
        <translation>Dicke der Wand.</translation>
    </message>
    <message>
        <source>Ring at</source>
        <comment>setting.ring_at_mm</comment>
        <translation>Ring bei</translation>
    </message>
    <message>
        <source>Height of the ring above the base.</source>
        <comment>setting.ring_at_mm.help</comment>
        <translation>Höhe des Rings über dem Boden.</translation>
    </message>
    <message>
        <source>Ring width</source>
        <comment>setting.ring_width_mm</comment>
        <translation>Ringbreite</translation>
    </message>
    <message>
        <source>Width of the flame at half its heat.</source>
        <comment>setting.ring_width_mm.help</comment>
        <translation>Breite der Flamme bei halber Wärme.</translation>
    </message>
    <message>
        <source>Flame</source>
        <comment>setting.flame_kW_m2</comment>
        <translation>Flamme</translation>
    </message>
    <message>
        <source>Heat into the ring, averaged over the turn.</source>
        <comment>setting.flame_kW_m2.help</comment>
        <translation>Wärme in den Ring, über die Drehung gemittelt.</translation>
    </message>
    <message>
        <source>Flame for</source>
        <comment>setting.heat_s</comment>
        <translation>Flamme für</translation>
    </message>
    <message>
        <source>When the flame goes out.</source>
        <comment>setting.heat_s.help</comment>
        <translation>Wann die Flamme ausgeht.</translation>
    </message>
    <message>
        <source>Score</source>
        <comment>setting.score_depth_um</comment>
        <translation>Anriss</translation>
    </message>
    <message>
        <source>Depth of the scored line; 0: none.</source>
        <comment>setting.score_depth_um.help</comment>
        <translation>Tiefe der geritzten Linie; 0: keine.</translation>
    </message>
    <message>
        <source>Score off by</source>
        <comment>setting.score_offset_mm</comment>
        <translation>Anriss versetzt um</translation>
    </message>
    <message>
        <source>From the middle of the ring.</source>
        <comment>setting.score_offset_mm.help</comment>
        <translation>Von der Mitte des Rings.</translation>
    </message>
    <message>
        <source>Drop of water</source>
        <comment>setting.drop</comment>
        <translation>Wassertropfen</translation>
    </message>
    <message>
        <source>Whether a drop lands on the ring.</source>
        <comment>setting.drop.help</comment>
        <translation>Ob ein Tropfen auf den Ring fällt.</translation>
    </message>
    <message>
        <source>Drop at</source>
        <comment>setting.drop_at_s</comment>
        <translation>Tropfen bei</translation>
    </message>
    <message>
        <source>When the drop lands.</source>
        <comment>setting.drop_at_s.help</comment>
        <translation>Wann der Tropfen auftrifft.</translation>
    </message>
    <message>
        <source>Drop off by</source>
        <comment>setting.drop_offset_mm</comment>
        <translation>Tropfen versetzt um</translation>
    </message>
    <message>
        <source>From the middle of the ring.</source>
        <comment>setting.drop_offset_mm.help</comment>
        <translation>Von der Mitte des Rings.</translation>
    </message>
    <message>
        <source>Hottest surface</source>
        <comment>reading.surface_peak_C</comment>
        <translation>Heißeste Oberfläche</translation>
    </message>
    <message>
        <source>Largest over the run.</source>
        <comment>reading.surface_peak_C.help</comment>
        <translation>Größter Wert im Lauf.</translation>
    </message>
    <message>
        <source>Swelling of the ring</source>
        <comment>reading.swell_um</comment>
        <translation>Dehnung des Rings</translation>
    </message>
    <message>
        <source>Outwards, at the middle of the ring.</source>
        <comment>reading.swell_um.help</comment>
        <translation>Nach außen, in der Mitte des Rings.</translation>
    </message>
    <message>
        <source>Along, outside</source>
        <comment>reading.axial_outside_MPa</comment>
        <translation>Längs, außen</translation>
    </message>
    <message>
        <source>In the middle of the ring.</source>
        <comment>reading.axial_outside_MPa.help</comment>
        <translation>In der Mitte des Rings.</translation>
    </message>
    <message>
        <source>Along, inside</source>
        <comment>reading.axial_inside_MPa</comment>
        <translation>Längs, innen</translation>
    </message>
    <message>
        <source>In the middle of the ring.</source>
        <comment>reading.axial_inside_MPa.help</comment>
        <translation>In der Mitte des Rings.</translation>
    </message>
    <message>
        <source>Around, outside</source>
        <comment>reading.hoop_MPa</comment>
        <translation>Ringsum, außen</translation>
    </message>
    <message>
        <source>In the middle of the ring.</source>
        <comment>reading.hoop_MPa.help</comment>
        <translation>In der Mitte des Rings.</translation>
    </message>
    <message>
        <source>Share of breaking</source>
        <comment>reading.intensity_ratio</comment>
        <translation>Anteil bis zum Bruch</translation>
    </message>
    <message>
        <source>K over K_IC of the stated flaw, at its peak.</source>
        <comment>reading.intensity_ratio.help</comment>
        <translation>K zu K_IC der angegebenen Fehlstelle, größter Wert.</translation>
    </message>
    <message>
        <source>Cracks</source>
        <comment>reading.breaks</comment>
        <translation>Reißt</translation>
    </message>
    <message>
        <source>The verdict for the stated flaw.</source>
        <comment>reading.breaks.help</comment>
        <translation>Das Urteil für die angegebene Fehlstelle.</translation>
    </message>
    <message>
        <source>Cracked at</source>
        <comment>reading.break_at_s</comment>
        <translation>Gerissen bei</translation>
    </message>
    <message>
        <source>Crack's run</source>
        <comment>reading.crack_run_us</comment>
        <translation>Lauf des Risses</translation>
    </message>
    <message>
        <source>From the flaw through the wall.</source>
        <comment>reading.crack_run_us.help</comment>
        <translation>Von der Fehlstelle durch die Wand.</translation>
    </message>
    <message>
        <source>Crack outside</source>
        <comment>reading.break_offset_mm</comment>
        <translation>Riss außen</translation>
    </message>
    <message>
        <source>Its distance from the ring's middle.</source>
        <comment>reading.break_offset_mm.help</comment>
        <translation>Sein Abstand von der Ringmitte.</translation>
    </message>
    <message>
        <source>Crack inside</source>
        <comment>reading.break_inside_mm</comment>
        <translation>Riss innen</translation>
    </message>
    <message>
        <source>Its distance from the ring's middle.</source>
        <comment>reading.break_inside_mm.help</comment>
        <translation>Sein Abstand von der Ringmitte.</translation>
    </message>
    <message>
        <source>Odds of a crack</source>
        <comment>reading.break_probability</comment>
        <translation>Risswahrscheinlichkeit</translation>
    </message>
    <message>
        <source>Over the spread of flaws.</source>
        <comment>reading.break_probability.help</comment>
        <translation>Über die Streuung der Fehlstellen.</translation>
    </message>
    <message>
        <source>Retardation peak</source>
        <comment>reading.retardation_peak_nm</comment>
        <translation>Größter Gangunterschied</translation>
    </message>
    <message>
        <source>Largest over the run.</source>
        <comment>reading.retardation_peak_nm.help</comment>
        <translation>Größter Wert im Lauf.</translation>
    </message>
    <message>
        <source>Ring outside</source>
        <comment>reading.surface_C</comment>
        <translation>Ring außen</translation>
    </message>
    <message>
        <source>K over K_IC: a crack runs at 1.</source>
        <comment>reading.intensity_ratio.help</comment>
        <translation>K zu K_IC: Bei 1 läuft ein Riss.</translation>
    </message>
</context>
<context>
    <name>scene.touch</name>
    <message>
        <source>Warm touch</source>
        <comment>title</comment>
        <translation>Warme Berührung</translation>
    </message>
    <message>
        <source>The plate is evenly cool and free of stress: between the polarizers it stays dark.</source>
        <comment>text.cold</comment>
        <translation>Die Platte ist überall gleich kühl und spannungsfrei: Zwischen den Polarisatoren bleibt sie dunkel.</translation>
    </message>
    <message>
        <source>The warm spot wants to grow, the cool glass around it holds it back: it is squeezed with {squeeze:.1f} MPa, and around it the glass is pulled with {pull:.1f} MPa.</source>
        <comment>text.warming</comment>
        <translation>Der warme Fleck will wachsen, das kühle Glas ringsum hält ihn auf: Er steht unter {squeeze:.1f} MPa Druck, das Glas ringsum unter {pull:.1f} MPa Zug.</translation>
    </message>
    <message>
        <source>The spot is {rise:.1f} °C warmer than the plate. With {nm:.0f} nm of retardation that is too faint to see unless the picture is brightened.</source>
        <comment>text.faint</comment>
        <translation>Der Fleck ist {rise:.1f} °C wärmer als die Platte. {nm:.0f} nm Gangunterschied sind zu schwach, um sie ohne Aufhellen zu sehen.</translation>
    </message>
    <message>
        <source>The glass is pulled with {pull:.0f} MPa. An ordinary plate holds about {strength:.0f}: a real one may well crack here.</source>
        <comment>text.hard_pull</comment>
        <translation>Im Glas herrschen {pull:.0f} MPa Zug. Eine gewöhnliche Platte hält etwa {strength:.0f}: Eine echte könnte hier reißen.</translation>
    </message>
    <message>
        <source>The tip is gone, but the picture stays: it is the warmth in the glass that you see, {rise:.0f} °C more than around it.</source>
        <comment>text.just_let_go</comment>
        <translation>Die Spitze ist fort, aber das Bild bleibt: Zu sehen ist die Wärme im Glas, {rise:.0f} °C mehr als ringsum.</translation>
    </message>
    <message>
        <source>The warmth spreads, nothing pulls so hard any more, and the picture fades: it took {half:.0f} s to half.</source>
        <comment>text.fading</comment>
        <translation>Die Wärme breitet sich aus, nichts zieht mehr so stark, und das Bild verblasst: in {half:.0f} s auf die Hälfte.</translation>
    </message>
    <message>
        <source>The plate is even again and the picture is dark: glass that only got warm keeps nothing.</source>
        <comment>text.gone</comment>
        <translation>Die Platte ist wieder gleichmäßig, das Bild dunkel: Glas, das nur warm wurde, behält nichts zurück.</translation>
    </message>
    <message>
        <source>The crack is pulled open with {percent:.0f} % of what it needs to run.</source>
        <comment>text.crack_waits</comment>
        <translation>Der Riss wird mit {percent:.0f} % von dem aufgezogen, was er zum Laufen braucht.</translation>
    </message>
    <message>
        <source>The crack has run to {length:.0f} mm and stopped: at its tip the glass is no longer pulled apart hard enough. What it cut through has let go of its stress.</source>
        <comment>text.crack_ran</comment>
        <translation>Der Riss ist bis {length:.0f} mm gelaufen und stehen geblieben: An seiner Spitze zieht es nicht mehr stark genug. Was er durchtrennt hat, ist entspannt.</translation>
    </message>
    <message>
        <source>The crack ran all through the plate, {at:.1f} s after the start: two pieces, and nothing pulls across the cut any more.</source>
        <comment>text.parted</comment>
        <translation>Der Riss lief {at:.1f} s nach dem Start durch die ganze Platte: zwei Stücke, und quer zum Schnitt zieht nichts mehr.</translation>
    </message>
    <message>
        <source>Glass</source>
        <comment>setting.glass</comment>
        <translation>Glas</translation>
    </message>
    <message>
        <source>What it is made of.</source>
        <comment>setting.glass.help</comment>
        <translation>Woraus es besteht.</translation>
    </message>
    <message>
        <source>Borosilicate</source>
        <comment>choice.glass.borosilicate</comment>
        <translation>Borosilikat</translation>
    </message>
    <message>
        <source>Fused silica</source>
        <comment>choice.glass.fused-silica</comment>
        <translation>Kieselglas</translation>
    </message>
    <message>
        <source>Lead crystal</source>
        <comment>choice.glass.lead-crystal</comment>
        <translation>Bleikristall</translation>
    </message>
    <message>
        <source>Soda lime</source>
        <comment>choice.glass.soda-lime</comment>
        <translation>Kalknatron</translation>
    </message>
    <message>
        <source>Thickness</source>
        <comment>setting.thickness_mm</comment>
        <translation>Dicke</translation>
    </message>
    <message>
        <source>Thickness of the plate.</source>
        <comment>setting.thickness_mm.help</comment>
        <translation>Dicke der Platte.</translation>
    </message>
    <message>
        <source>Spot</source>
        <comment>setting.spot_mm</comment>
        <translation>Fleck</translation>
    </message>
    <message>
        <source>Diameter within which 63 % of the heat falls.</source>
        <comment>setting.spot_mm.help</comment>
        <translation>Durchmesser, in den 63 % der Wärme fallen.</translation>
    </message>
    <message>
        <source>Power</source>
        <comment>setting.power_W</comment>
        <translation>Leistung</translation>
    </message>
    <message>
        <source>Heat of the warm tip, both faces together.</source>
        <comment>setting.power_W.help</comment>
        <translation>Wärme der warmen Spitze, beide Seiten zusammen.</translation>
    </message>
    <message>
        <source>Touch for</source>
        <comment>setting.seconds</comment>
        <translation>Berühren für</translation>
    </message>
    <message>
        <source>How long a tip nobody moves stays.</source>
        <comment>setting.seconds.help</comment>
        <translation>Wie lange eine Spitze bleibt, die niemand bewegt.</translation>
    </message>
    <message>
        <source>Old crack</source>
        <comment>setting.crack_mm</comment>
        <translation>Alter Riss</translation>
    </message>
    <message>
        <source>Length of a crack from the middle of the lower edge; 0: none.</source>
        <comment>setting.crack_mm.help</comment>
        <translation>Länge eines Risses von der Mitte des unteren Rands; 0: keiner.</translation>
    </message>
    <message>
        <source>Hottest place</source>
        <comment>reading.spot_C</comment>
        <translation>Heißeste Stelle</translation>
    </message>
    <message>
        <source>Mean through the thickness; largest over the run.</source>
        <comment>reading.spot_C.help</comment>
        <translation>Mittel durch die Dicke; größter Wert im Lauf.</translation>
    </message>
    <message>
        <source>The crack runs</source>
        <comment>reading.crack_runs</comment>
        <translation>Der Riss läuft</translation>
    </message>
    <message>
        <source>Whether the old crack has grown.</source>
        <comment>reading.crack_runs.help</comment>
        <translation>Ob der alte Riss gewachsen ist.</translation>
    </message>
    <message>
        <source>Crack length</source>
        <comment>reading.crack_length_mm</comment>
        <translation>Risslänge</translation>
    </message>
    <message>
        <source>Where its tip is now.</source>
        <comment>reading.crack_length_mm.help</comment>
        <translation>Wo seine Spitze jetzt ist.</translation>
    </message>
    <message>
        <source>K over K_IC</source>
        <comment>reading.intensity_ratio</comment>
        <translation>K zu K_IC</translation>
    </message>
    <message>
        <source>Of the crack, at its peak.</source>
        <comment>reading.intensity_ratio.help</comment>
        <translation>Des Risses, größter Wert.</translation>
    </message>
    <message>
        <source>Largest pull</source>
        <comment>reading.tension_MPa</comment>
        <translation>Größter Zug</translation>
    </message>
    <message>
        <source>Over the run; without what a crack adds.</source>
        <comment>reading.tension_MPa.help</comment>
        <translation>Im Lauf; ohne das, was ein Riss hinzufügt.</translation>
    </message>
    <message>
        <source>Largest squeeze</source>
        <comment>reading.compression_MPa</comment>
        <translation>Größter Druck</translation>
    </message>
    <message>
        <source>Over the run; without a crack.</source>
        <comment>reading.compression_MPa.help</comment>
        <translation>Im Lauf; ohne Riss.</translation>
    </message>
    <message>
        <source>Retardation peak</source>
        <comment>reading.retardation_peak_nm</comment>
        <translation>Größter Gangunterschied</translation>
    </message>
    <message>
        <source>Over the run; without a crack.</source>
        <comment>reading.retardation_peak_nm.help</comment>
        <translation>Im Lauf; ohne Riss.</translation>
    </message>
    <message>
        <source>Fades to half in</source>
        <comment>reading.fade_half_s</comment>
        <translation>Auf die Hälfte in</translation>
    </message>
    <message>
        <source>Largest retardation, since it was let go.</source>
        <comment>reading.fade_half_s.help</comment>
        <translation>Größter Gangunterschied seit dem Loslassen.</translation>
    </message>
    <message>
        <source>Retardation</source>
        <comment>reading.retardation_nm</comment>
        <translation>Gangunterschied</translation>
    </message>
</context>
<context>
    <name>scene.toughen</name>
    <message>
        <source>Toughening</source>
        <comment>title</comment>
        <translation>Vorspannen</translation>
    </message>
    <message>
        <source>The left plate is {start:.0f} °C hot and soft. It holds no stress, so it is dark.</source>
        <comment>text.hot</comment>
        <translation>Die linke Platte ist {start:.0f} °C heiß und weich. Sie hält keine Spannung, also ist sie dunkel.</translation>
    </message>
    <message>
        <source>The jets cool the skin first. It wants to shrink, the soft inside lets it: a pull of only {pull:.1f} MPa.</source>
        <comment>text.skin</comment>
        <translation>Die Luftdüsen kühlen zuerst die Oberfläche. Sie will schrumpfen, das weiche Innere lässt sie: nur {pull:.1f} MPa Zug.</translation>
    </message>
    <message>
        <source>It was too cold to give way: the skin is pulled with {pull:.0f} MPa, and many a plate breaks in the jets.</source>
        <comment>text.brittle</comment>
        <translation>Sie war zu kalt zum Nachgeben: {pull:.0f} MPa Zug in der Oberfläche, und manche Platte bricht in den Luftdüsen.</translation>
    </message>
    <message>
        <source>The skin is stiff, the middle still flows: the squeeze is being locked in.</source>
        <comment>text.locking</comment>
        <translation>Die Oberfläche ist starr, die Mitte fließt noch: Der Druck wird eingeschlossen.</translation>
    </message>
    <message>
        <source>Now the middle shrinks too, and the stiff skin holds it: the skin is squeezed with {squeeze:.0f} MPa, the middle pulled with {pull:.0f} MPa.</source>
        <comment>text.shrinking</comment>
        <translation>Nun schrumpft auch die Mitte, und die starre Oberfläche hält sie: außen {squeeze:.0f} MPa Druck, in der Mitte {pull:.0f} MPa Zug.</translation>
    </message>
    <message>
        <source>Cold, and toughened: skin squeezed with {squeeze:.0f} MPa. Any load must take that away first, so it bears {ratio:.1f} times as much.</source>
        <comment>text.toughened</comment>
        <translation>Kalt und vorgespannt: {squeeze:.0f} MPa Druck in der Oberfläche. Jede Last muss ihn erst aufheben, darum trägt sie {ratio:.1f}-mal so viel.</translation>
    </message>
    <message>
        <source>Cold. The skin is squeezed with {squeeze:.0f} MPa, but it would break into {count:.0f} pieces where {asked:.0f} are asked: not toughened.</source>
        <comment>text.coarse</comment>
        <translation>Kalt. Die Oberfläche steht unter {squeeze:.0f} MPa Druck, doch sie bräche in {count:.0f} Stücke, wo {asked:.0f} verlangt sind: nicht vorgespannt.</translation>
    </message>
    <message>
        <source>Cold, and heat-strengthened: {squeeze:.0f} MPa of squeeze. Stronger than plain glass, but it will not break into dice.</source>
        <comment>text.heat-strengthened</comment>
        <translation>Kalt und teilvorgespannt: {squeeze:.0f} MPa Druck. Fester als normales Glas, aber es zerfällt nicht in Krümel.</translation>
    </message>
    <message>
        <source>Cold, and hardly stronger than plain glass: {squeeze:.0f} MPa of squeeze.</source>
        <comment>text.annealed</comment>
        <translation>Kalt und kaum fester als normales Glas: {squeeze:.0f} MPa Druck.</translation>
    </message>
    <message>
        <source>Both plates are about to be put to the test.</source>
        <comment>text.coming</comment>
        <translation>Gleich werden beide Platten geprüft.</translation>
    </message>
    <message>
        <source>Both are bent: {load:.0f} MPa at the face.</source>
        <comment>text.bending</comment>
        <translation>Beide werden gebogen: {load:.0f} MPa an der Fläche.</translation>
    </message>
    <message>
        <source>Bent to {load:.0f} MPa, both hold.</source>
        <comment>text.none_bend</comment>
        <translation>Auf {load:.0f} MPa gebogen, halten beide.</translation>
    </message>
    <message>
        <source>Bent to {load:.0f} MPa: the plain plate is in {other} long shards, the blown one holds.</source>
        <comment>text.plain_bend</comment>
        <translation>Auf {load:.0f} MPa gebogen: Die normale Platte liegt in {other} langen Scherben, die angeblasene hält.</translation>
    </message>
    <message>
        <source>Bent to {load:.0f} MPa, both break: the plain plate into {other} long shards, the blown one into {pieces} pieces.</source>
        <comment>text.both_bend</comment>
        <translation>Auf {load:.0f} MPa gebogen, brechen beide: die normale Platte in {other} lange Scherben, die angeblasene in {pieces} Stücke.</translation>
    </message>
    <message>
        <source>Bent to {load:.0f} MPa, both break into long shards: the plain plate into {other}, the blown one into {pieces}. It holds too little energy for dice.</source>
        <comment>text.alike_bend</comment>
        <translation>Auf {load:.0f} MPa gebogen, brechen beide in lange Scherben: die normale in {other}, die angeblasene in {pieces}. Für Krümel speichert sie zu wenig Energie.</translation>
    </message>
    <message>
        <source>Bent to {load:.0f} MPa: the blown plate is in {pieces} pieces, the other holds.</source>
        <comment>text.blown_bend</comment>
        <translation>Auf {load:.0f} MPa gebogen: Die angeblasene Platte liegt in {pieces} Stücken, die andere hält.</translation>
    </message>
    <message>
        <source>A blow of {blow:.1f} J, and both hold.</source>
        <comment>text.none_hit</comment>
        <translation>Ein Schlag mit {blow:.1f} J, und beide halten.</translation>
    </message>
    <message>
        <source>A blow of {blow:.1f} J: the plain plate is in {other} long shards, the blown one holds. It would take {limit:.1f} J.</source>
        <comment>text.plain_hit</comment>
        <translation>Ein Schlag mit {blow:.1f} J: Die normale Platte liegt in {other} langen Scherben, die angeblasene hält. Dafür bräuchte es {limit:.1f} J.</translation>
    </message>
    <message>
        <source>A blow of {blow:.1f} J breaks both: the plain plate into {other} long shards, the blown one into {pieces} small pieces.</source>
        <comment>text.both_hit</comment>
        <translation>Ein Schlag mit {blow:.1f} J bricht beide: die normale Platte in {other} lange Scherben, die angeblasene in {pieces} kleine Stücke.</translation>
    </message>
    <message>
        <source>A blow of {blow:.1f} J breaks both into long shards: the plain plate into {other}, the blown one into {pieces}. It holds too little energy for dice.</source>
        <comment>text.alike_hit</comment>
        <translation>Ein Schlag mit {blow:.1f} J bricht beide in lange Scherben: die normale in {other}, die angeblasene in {pieces}. Für Krümel speichert sie zu wenig Energie.</translation>
    </message>
    <message>
        <source>A blow of {blow:.1f} J: the blown plate is in {pieces} pieces, the other holds.</source>
        <comment>text.blown_hit</comment>
        <translation>Ein Schlag mit {blow:.1f} J: Die angeblasene Platte liegt in {pieces} Stücken, die andere hält.</translation>
    </message>
    <message>
        <source>The laminated plate has cracked, but its film holds {held:.0f} % of the glass and {carried:.0f} % of the load.</source>
        <comment>text.film_bend</comment>
        <translation>Die Verbundscheibe ist gerissen, aber ihre Folie hält {held:.0f} % des Glases und {carried:.0f} % der Last.</translation>
    </message>
    <message>
        <source>The laminated plate has cracked, but its film holds {held:.0f} % of the glass, and it carries {carried:.0f} % of its load.</source>
        <comment>text.film_hit</comment>
        <translation>Die Verbundscheibe ist gerissen, aber ihre Folie hält {held:.0f} % des Glases, und sie trägt {carried:.0f} % ihrer Last.</translation>
    </message>
    <message>
        <source>One cut reaches the pull inside, and all of it lets go: {pieces} small pieces. The plain plate is cut in two.</source>
        <comment>text.cut_dices</comment>
        <translation>Ein Schnitt erreicht den Zug im Inneren, und alles löst sich: {pieces} kleine Stücke. Die normale Platte ist nur entzwei.</translation>
    </message>
    <message>
        <source>There is too little energy inside to drive a crack: the cut parts both plates neatly in two.</source>
        <comment>text.cut_parts</comment>
        <translation>Im Inneren ist zu wenig Energie, um einen Riss zu treiben: Der Schnitt teilt beide Platten sauber.</translation>
    </message>
    <message>
        <source>{ground:.1f} mm are off one face. The squeeze that is gone no longer balances the other side: off the table, the plate will curl.</source>
        <comment>text.grinding</comment>
        <translation>{ground:.1f} mm sind von einer Fläche ab. Der fehlende Druck hält der anderen Seite nicht mehr die Waage: Vom Tisch gehoben, wird sich die Platte wölben.</translation>
    </message>
    <message>
        <source>{ground:.1f} mm off, the wheel has met the pull inside: the plate lets go and breaks into {pieces} pieces.</source>
        <comment>text.ground_dices</comment>
        <translation>{ground:.1f} mm ab, und die Scheibe trifft den Zug im Inneren: Die Platte gibt nach und zerfällt in {pieces} Stücke.</translation>
    </message>
    <message>
        <source>{ground:.1f} mm are off, and it still holds: it would break at {limit:.1f} mm. Lifted off the table it curls, like an arc of {radius:.1f} m radius.</source>
        <comment>text.ground</comment>
        <translation>{ground:.1f} mm sind ab, und sie hält noch: Bei {limit:.1f} mm bräche sie. Vom Tisch gehoben, wölbt sie sich wie ein Bogen von {radius:.1f} m Radius.</translation>
    </message>
    <message>
        <source>{ground:.1f} mm are off one face, and it only curls: there is too little pull inside to let it go.</source>
        <comment>text.ground_weak</comment>
        <translation>{ground:.1f} mm sind von einer Fläche ab, und sie wölbt sich nur: Innen ist zu wenig Zug, um sie zu zerlegen.</translation>
    </message>
    <message>
        <source>depth</source>
        <comment>text.depth</comment>
        <translation>Tiefe</translation>
    </message>
    <message>
        <source>stress</source>
        <comment>text.stress</comment>
        <translation>Spannung</translation>
    </message>
    <message>
        <source>blown plate</source>
        <comment>text.blown</comment>
        <translation>angeblasene Platte</translation>
    </message>
    <message>
        <source>plain plate</source>
        <comment>text.plain</comment>
        <translation>normale Platte</translation>
    </message>
    <message>
        <source>laminated plate</source>
        <comment>text.laminated</comment>
        <translation>Verbundscheibe</translation>
    </message>
    <message>
        <source>toughened</source>
        <comment>text.limit_toughened</comment>
        <translation>vorgespannt</translation>
    </message>
    <message>
        <source>heat-strengthened</source>
        <comment>text.limit_strengthened</comment>
        <translation>teilvorgespannt</translation>
    </message>
    <message>
        <source>along the plate</source>
        <comment>text.along</comment>
        <translation>entlang der Platte</translation>
    </message>
    <message>
        <source>Hit both</source>
        <comment>action.hit_now</comment>
        <translation>Beide anschlagen</translation>
    </message>
    <message>
        <source>Bend both</source>
        <comment>action.bend_now</comment>
        <translation>Beide biegen</translation>
    </message>
    <message>
        <source>Cut both</source>
        <comment>action.cut_now</comment>
        <translation>Beide schneiden</translation>
    </message>
    <message>
        <source>Grind one face</source>
        <comment>action.grind_now</comment>
        <translation>Eine Fläche schleifen</translation>
    </message>
    <message>
        <source>Glass</source>
        <comment>setting.glass</comment>
        <translation>Glas</translation>
    </message>
    <message>
        <source>What both are made of.</source>
        <comment>setting.glass.help</comment>
        <translation>Woraus beide bestehen.</translation>
    </message>
    <message>
        <source>Borosilicate</source>
        <comment>choice.glass.borosilicate</comment>
        <translation>Borosilikat</translation>
    </message>
    <message>
        <source>Fused silica</source>
        <comment>choice.glass.fused-silica</comment>
        <translation>Kieselglas</translation>
    </message>
    <message>
        <source>Lead crystal</source>
        <comment>choice.glass.lead-crystal</comment>
        <translation>Bleikristall</translation>
    </message>
    <message>
        <source>Soda lime</source>
        <comment>choice.glass.soda-lime</comment>
        <translation>Kalknatron</translation>
    </message>
    <message>
        <source>Thickness</source>
        <comment>setting.thickness_mm</comment>
        <translation>Dicke</translation>
    </message>
    <message>
        <source>Thickness of both plates.</source>
        <comment>setting.thickness_mm.help</comment>
        <translation>Dicke beider Platten.</translation>
    </message>
    <message>
        <source>Start</source>
        <comment>setting.start_C</comment>
        <translation>Start</translation>
    </message>
    <message>
        <source>Heat when the jets start.</source>
        <comment>setting.start_C.help</comment>
        <translation>Temperatur, wenn die Luftdüsen beginnen.</translation>
    </message>
    <message>
        <source>Jets</source>
        <comment>setting.jet_W_m2K</comment>
        <translation>Düsen</translation>
    </message>
    <message>
        <source>15: hardly more than still air.</source>
        <comment>setting.jet_W_m2K.help</comment>
        <translation>15: kaum mehr als ruhige Luft.</translation>
    </message>
    <message>
        <source>Uneven by</source>
        <comment>setting.jet_unevenness_pct</comment>
        <translation>Ungleich um</translation>
    </message>
    <message>
        <source>How much stronger a jet's middle cools.</source>
        <comment>setting.jet_unevenness_pct.help</comment>
        <translation>Wie viel stärker die Mitte eines Strahls kühlt.</translation>
    </message>
    <message>
        <source>Beside it</source>
        <comment>setting.beside</comment>
        <translation>Daneben</translation>
    </message>
    <message>
        <source>The other plate: never toughened.</source>
        <comment>setting.beside.help</comment>
        <translation>Die andere Platte: nie vorgespannt.</translation>
    </message>
    <message>
        <source>Plain</source>
        <comment>choice.beside.plain</comment>
        <translation>Normal</translation>
    </message>
    <message>
        <source>Laminated</source>
        <comment>choice.beside.laminated</comment>
        <translation>Verbundglas</translation>
    </message>
    <message>
        <source>Then</source>
        <comment>setting.then</comment>
        <translation>Danach</translation>
    </message>
    <message>
        <source>What is done to both once they are cold.</source>
        <comment>setting.then.help</comment>
        <translation>Was mit beiden geschieht, wenn sie kalt sind.</translation>
    </message>
    <message>
        <source>Nothing</source>
        <comment>choice.then.nothing</comment>
        <translation>Nichts</translation>
    </message>
    <message>
        <source>Hit</source>
        <comment>choice.then.hit</comment>
        <translation>Anschlagen</translation>
    </message>
    <message>
        <source>Bend</source>
        <comment>choice.then.bend</comment>
        <translation>Biegen</translation>
    </message>
    <message>
        <source>Cut</source>
        <comment>choice.then.cut</comment>
        <translation>Schneiden</translation>
    </message>
    <message>
        <source>Grind one face</source>
        <comment>choice.then.grind_one_face</comment>
        <translation>Eine Fläche schleifen</translation>
    </message>
    <message>
        <source>Then at</source>
        <comment>setting.act_at_s</comment>
        <translation>Danach bei</translation>
    </message>
    <message>
        <source>0: as soon as it is cold.</source>
        <comment>setting.act_at_s.help</comment>
        <translation>0: sobald sie kalt ist.</translation>
    </message>
    <message>
        <source>Blow</source>
        <comment>setting.blow_J</comment>
        <translation>Schlag</translation>
    </message>
    <message>
        <source>Energy of a blunt blow.</source>
        <comment>setting.blow_J.help</comment>
        <translation>Energie eines stumpfen Schlags.</translation>
    </message>
    <message>
        <source>Bend to</source>
        <comment>setting.bend_MPa</comment>
        <translation>Biegen auf</translation>
    </message>
    <message>
        <source>Pull at the face if it were one plain plate.</source>
        <comment>setting.bend_MPa.help</comment>
        <translation>Zug an der Fläche, wäre es eine einfache Platte.</translation>
    </message>
    <message>
        <source>Grind off</source>
        <comment>setting.grind_mm</comment>
        <translation>Abschleifen</translation>
    </message>
    <message>
        <source>Taken off one face, held flat; then let go.</source>
        <comment>setting.grind_mm.help</comment>
        <translation>Von einer Fläche, flach gehalten; dann losgelassen.</translation>
    </message>
    <message>
        <source>Surface</source>
        <comment>reading.surface_MPa</comment>
        <translation>Oberfläche</translation>
    </message>
    <message>
        <source>Of the blown plate.</source>
        <comment>reading.surface_MPa.help</comment>
        <translation>Der angeblasenen Platte.</translation>
    </message>
    <message>
        <source>Middle</source>
        <comment>reading.centre_MPa</comment>
        <translation>Mitte</translation>
    </message>
    <message>
        <source>Of the blown plate.</source>
        <comment>reading.centre_MPa.help</comment>
        <translation>Der angeblasenen Platte.</translation>
    </message>
    <message>
        <source>No stress at</source>
        <comment>reading.neutral_depth_mm</comment>
        <translation>Keine Spannung bei</translation>
    </message>
    <message>
        <source>Depth below the surface.</source>
        <comment>reading.neutral_depth_mm.help</comment>
        <translation>Tiefe unter der Oberfläche.</translation>
    </message>
    <message>
        <source>Bending strength</source>
        <comment>reading.bending_strength_MPa</comment>
        <translation>Biegefestigkeit</translation>
    </message>
    <message>
        <source>New glass, short load.</source>
        <comment>reading.bending_strength_MPa.help</comment>
        <translation>Neues Glas, kurze Last.</translation>
    </message>
    <message>
        <source>Times as strong</source>
        <comment>reading.strength_ratio</comment>
        <translation>Wievielmal so fest</translation>
    </message>
    <message>
        <source>Used glass, a load that stays 30 minutes.</source>
        <comment>reading.strength_ratio.help</comment>
        <translation>Gebrauchtes Glas, 30 Minuten Last.</translation>
    </message>
    <message>
        <source>Times as strong, new</source>
        <comment>reading.strength_ratio_new</comment>
        <translation>Wievielmal so fest, neu</translation>
    </message>
    <message>
        <source>New glass, a load of 5 seconds.</source>
        <comment>reading.strength_ratio_new.help</comment>
        <translation>Neues Glas, 5 Sekunden Last.</translation>
    </message>
    <message>
        <source>Blow to break</source>
        <comment>reading.blow_to_break_J</comment>
        <translation>Schlag zum Bruch</translation>
    </message>
    <message>
        <source>Half of used plates break.</source>
        <comment>reading.blow_to_break_J.help</comment>
        <translation>Die Hälfte gebrauchter Platten bricht.</translation>
    </message>
    <message>
        <source>Blow to break, other</source>
        <comment>reading.blow_to_break_beside_J</comment>
        <translation>Schlag zum Bruch, andere</translation>
    </message>
    <message>
        <source>Half of used plates break.</source>
        <comment>reading.blow_to_break_beside_J.help</comment>
        <translation>Die Hälfte gebrauchter Platten bricht.</translation>
    </message>
    <message>
        <source>Particles</source>
        <comment>reading.particles_50mm</comment>
        <translation>Bruchstücke</translation>
    </message>
    <message>
        <source>In 50 mm by 50 mm, from the energy.</source>
        <comment>reading.particles_50mm.help</comment>
        <translation>Auf 50 mm mal 50 mm, aus der Energie.</translation>
    </message>
    <message>
        <source>Particles asked</source>
        <comment>reading.particles_asked</comment>
        <translation>Verlangte Bruchstücke</translation>
    </message>
    <message>
        <source>By EN 12150-1 for this thickness.</source>
        <comment>reading.particles_asked.help</comment>
        <translation>Nach EN 12150-1 für diese Dicke.</translation>
    </message>
    <message>
        <source>Grade</source>
        <comment>reading.grade</comment>
        <translation>Einstufung</translation>
    </message>
    <message>
        <source>The worse of surface compression and particle count.</source>
        <comment>reading.grade.help</comment>
        <translation>Das Schlechtere aus Oberflächendruck und Bruchstückzahl.</translation>
    </message>
    <message>
        <source>annealed</source>
        <comment>value.grade.annealed</comment>
        <translation>gekühlt</translation>
    </message>
    <message>
        <source>heat-strengthened</source>
        <comment>value.grade.heat-strengthened</comment>
        <translation>teilvorgespannt</translation>
    </message>
    <message>
        <source>toughened</source>
        <comment>value.grade.toughened</comment>
        <translation>vorgespannt</translation>
    </message>
    <message>
        <source>Grade limited by</source>
        <comment>reading.grade_limited_by</comment>
        <translation>Einstufung begrenzt durch</translation>
    </message>
    <message>
        <source>nothing</source>
        <comment>value.grade_limited_by.nothing</comment>
        <translation>nichts</translation>
    </message>
    <message>
        <source>surface compression</source>
        <comment>value.grade_limited_by.surface compression</comment>
        <translation>Druck in der Oberfläche</translation>
    </message>
    <message>
        <source>particle count</source>
        <comment>value.grade_limited_by.particle count</comment>
        <translation>Zahl der Bruchstücke</translation>
    </message>
    <message>
        <source>both</source>
        <comment>value.grade_limited_by.both</comment>
        <translation>beides</translation>
    </message>
    <message>
        <source>A crack runs by itself</source>
        <comment>reading.runs_by_itself</comment>
        <translation>Ein Riss läuft von selbst</translation>
    </message>
    <message>
        <source>Driven by the energy inside.</source>
        <comment>reading.runs_by_itself.help</comment>
        <translation>Getrieben von der Energie im Inneren.</translation>
    </message>
    <message>
        <source>Energy inside</source>
        <comment>reading.energy_J_m2</comment>
        <translation>Energie im Inneren</translation>
    </message>
    <message>
        <source>Pull in the jets</source>
        <comment>reading.quench_pull_MPa</comment>
        <translation>Zug in den Luftdüsen</translation>
    </message>
    <message>
        <source>Largest at the surface.</source>
        <comment>reading.quench_pull_MPa.help</comment>
        <translation>Größter Wert an der Oberfläche.</translation>
    </message>
    <message>
        <source>Odds of a break in the jets</source>
        <comment>reading.quench_break_probability</comment>
        <translation>Bruchwahrscheinlichkeit in den Luftdüsen</translation>
    </message>
    <message>
        <source>New glass.</source>
        <comment>reading.quench_break_probability.help</comment>
        <translation>Neues Glas.</translation>
    </message>
    <message>
        <source>Sudden chill it bears</source>
        <comment>reading.shock_K</comment>
        <translation>Ertragene Abschreckung</translation>
    </message>
    <message>
        <source>By the model: new glass, held fast.</source>
        <comment>reading.shock_K.help</comment>
        <translation>Nach dem Modell: neues Glas, fest gehalten.</translation>
    </message>
    <message>
        <source>Sudden chill, plain</source>
        <comment>reading.shock_plain_K</comment>
        <translation>Abschreckung, normal</translation>
    </message>
    <message>
        <source>By the model: new glass, held fast.</source>
        <comment>reading.shock_plain_K.help</comment>
        <translation>Nach dem Modell: neues Glas, fest gehalten.</translation>
    </message>
    <message>
        <source>Sudden chill, standard</source>
        <comment>reading.shock_standard_K</comment>
        <translation>Abschreckung, Norm</translation>
    </message>
    <message>
        <source>For the grade.</source>
        <comment>reading.shock_standard_K.help</comment>
        <translation>Für die Einstufung.</translation>
    </message>
    <message>
        <source>Sudden chill, standard, plain</source>
        <comment>reading.shock_standard_plain_K</comment>
        <translation>Abschreckung, Norm, normal</translation>
    </message>
    <message>
        <source>Breaks</source>
        <comment>reading.breaks</comment>
        <translation>Bricht</translation>
    </message>
    <message>
        <source>The blown plate, with middling flaws.</source>
        <comment>reading.breaks.help</comment>
        <translation>Die angeblasene Platte, mit mittleren Fehlstellen.</translation>
    </message>
    <message>
        <source>Broke at</source>
        <comment>reading.break_at_s</comment>
        <translation>Gebrochen bei</translation>
    </message>
    <message>
        <source>Odds of a break</source>
        <comment>reading.break_probability</comment>
        <translation>Bruchwahrscheinlichkeit</translation>
    </message>
    <message>
        <source>Of the blown plate, used.</source>
        <comment>reading.break_probability.help</comment>
        <translation>Der angeblasenen Platte, gebraucht.</translation>
    </message>
    <message>
        <source>Pieces</source>
        <comment>reading.pieces</comment>
        <translation>Stücke</translation>
    </message>
    <message>
        <source>Of the blown plate; those under 3 mm are drawn as 3.</source>
        <comment>reading.pieces.help</comment>
        <translation>Der angeblasenen Platte; unter 3 mm sind als 3 gezeichnet.</translation>
    </message>
    <message>
        <source>Other breaks</source>
        <comment>reading.breaks_beside</comment>
        <translation>Andere bricht</translation>
    </message>
    <message>
        <source>Odds of a break, other</source>
        <comment>reading.break_probability_beside</comment>
        <translation>Bruchwahrscheinlichkeit, andere</translation>
    </message>
    <message>
        <source>Used.</source>
        <comment>reading.break_probability_beside.help</comment>
        <translation>Gebraucht.</translation>
    </message>
    <message>
        <source>Pieces, other</source>
        <comment>reading.pieces_beside</comment>
        <translation>Stücke, andere</translation>
    </message>
    <message>
        <source>Load after cracking</source>
        <comment>reading.laminated_load_pct</comment>
        <translation>Last nach dem Reißen</translation>
    </message>
    <message>
        <source>Of the load that cracked it.</source>
        <comment>reading.laminated_load_pct.help</comment>
        <translation>Der Last, die sie riss.</translation>
    </message>
    <message>
        <source>Glass held</source>
        <comment>reading.laminated_held_pct</comment>
        <translation>Gehaltenes Glas</translation>
    </message>
    <message>
        <source>By the film, after cracking.</source>
        <comment>reading.laminated_held_pct.help</comment>
        <translation>Von der Folie, nach dem Reißen.</translation>
    </message>
    <message>
        <source>Ground off</source>
        <comment>reading.ground_mm</comment>
        <translation>Abgeschliffen</translation>
    </message>
    <message>
        <source>Lets go at</source>
        <comment>reading.lets_go_mm</comment>
        <translation>Zerfällt bei</translation>
    </message>
    <message>
        <source>Ground off one face.</source>
        <comment>reading.lets_go_mm.help</comment>
        <translation>Von einer Fläche abgeschliffen.</translation>
    </message>
    <message>
        <source>Curl</source>
        <comment>reading.curl_per_m</comment>
        <translation>Wölbung</translation>
    </message>
    <message>
        <source>Curvature once it is let go.</source>
        <comment>reading.curl_per_m.help</comment>
        <translation>Krümmung nach dem Loslassen.</translation>
    </message>
    <message>
        <source>Retardation peak</source>
        <comment>reading.retardation_peak_nm</comment>
        <translation>Größter Gangunterschied</translation>
    </message>
    <message>
        <source>Edge-on, in 5 mm of glass.</source>
        <comment>reading.retardation_peak_nm.help</comment>
        <translation>Durch die Kante, in 5 mm Glas.</translation>
    </message>
    <message>
        <source>Surface</source>
        <comment>reading.surface_C</comment>
        <translation>Oberfläche</translation>
    </message>
    <message>
        <source>Middle</source>
        <comment>reading.centre_C</comment>
        <translation>Mitte</translation>
    </message>
</context>
<context>
    <name>describe</name>
    <message>
        <source>The picture is brightened {gain:g} times.</source>
        <comment>light.gain</comment>
        <translation>Das Bild ist {gain:g}-fach aufgehellt.</translation>
    </message>
    <message>
        <source>Both polarizing filters are out, so no stress can show.</source>
        <comment>light.none</comment>
        <translation>Beide Polarisationsfilter sind draußen, also kann sich keine Spannung zeigen.</translation>
    </message>
    <message>
        <source>One polarizing filter is out, so no stress can show.</source>
        <comment>light.one</comment>
        <translation>Ein Polarisationsfilter ist draußen, also kann sich keine Spannung zeigen.</translation>
    </message>
    <message>
        <source>The tint plate is in: what has no stress looks {bare}, and stress changes that colour.</source>
        <comment>light.tint</comment>
        <translation>Die Lambda-Platte ist drin: Was keine Spannung hat, erscheint {bare}, und Spannung ändert diese Farbe.</translation>
    </message>
    <message>
        <source>The polarizers stand parallel: what has no stress is bright, and stress darkens it.</source>
        <comment>light.parallel</comment>
        <translation>Die Polarisatoren stehen parallel: Was keine Spannung hat, ist hell, und Spannung verdunkelt es.</translation>
    </message>
    <message>
        <source>The polarizers stand neither crossed nor parallel: what has no stress looks {bare}.</source>
        <comment>light.turned</comment>
        <translation>Die Polarisatoren stehen weder gekreuzt noch parallel: Was keine Spannung hat, erscheint {bare}.</translation>
    </message>
    <message>
        <source>The lamp gives {lamp} light only, so bands show and other colours do not.</source>
        <comment>light.lamp</comment>
        <translation>Die Lampe gibt nur Licht von einer Farbe, {lamp}: Streifen zeigen sich, andere Farben nicht.</translation>
    </message>
    <message>
        <source>The piece is all dark: no stress shows anywhere.</source>
        <comment>all_dark</comment>
        <translation>Das Stück ist ganz dunkel: Nirgends zeigt sich Spannung.</translation>
    </message>
    <message>
        <source>The piece looks like the empty field around it, {colour}: no stress shows.</source>
        <comment>all_alike</comment>
        <translation>Das Stück sieht aus wie das leere Feld ringsum, {colour}: Es zeigt sich keine Spannung.</translation>
    </message>
    <message>
        <source>The piece is evenly {colour}, from edge to edge.</source>
        <comment>even</comment>
        <translation>Das Stück ist gleichmäßig {colour}, von Rand zu Rand.</translation>
    </message>
    <message>
        <source>The piece is almost dark; a faint light shows {bright}.</source>
        <comment>faint</comment>
        <translation>Das Stück ist fast dunkel; {bright} zeigt sich ein schwaches Licht.</translation>
    </message>
    <message>
        <source>The one {place} is almost dark; a faint light shows {bright}.</source>
        <comment>brightest_faint</comment>
        <translation>Das Stück {place} ist fast dunkel; {bright} zeigt sich ein schwaches Licht.</translation>
    </message>
    <message>
        <source>It is {level} along the upper and lower edges, with a dark line along the middle.</source>
        <comment>dark_line</comment>
        <translation>Am oberen und unteren Rand ist es {level}, mit einer dunklen Linie entlang der Mitte.</translation>
    </message>
    <message>
        <source>The one {place} is {level} along both edges, with a dark line along the middle.</source>
        <comment>brightest_dark_line</comment>
        <translation>Das Stück {place} ist an beiden Rändern {level}, mit einer dunklen Linie entlang der Mitte.</translation>
    </message>
    <message>
        <source>It is {level} {bright} and darker {dark}.</source>
        <comment>one_place</comment>
        <translation>Es ist {bright} {level} und {dark} dunkler.</translation>
    </message>
    <message>
        <source>Light and dark patches alternate; the brightest is {bright}.</source>
        <comment>patches</comment>
        <translation>Helle und dunkle Stellen wechseln sich ab; die hellste ist {bright}.</translation>
    </message>
    <message>
        <source>{count} pieces; light shows {places}.</source>
        <comment>several</comment>
        <translation>{count} Stücke; Licht zeigt sich {places}.</translation>
    </message>
    <message>
        <source>{count} pieces, and all of them are dark: no stress shows.</source>
        <comment>several_dark</comment>
        <translation>{count} Stücke, und alle sind dunkel: Es zeigt sich keine Spannung.</translation>
    </message>
    <message>
        <source>The one {place} is {level} {bright} and darker {dark}.</source>
        <comment>brightest</comment>
        <translation>Das Stück {place} ist {bright} {level} und {dark} dunkler.</translation>
    </message>
    <message>
        <source>The one {place} has light and dark patches, brightest {bright}.</source>
        <comment>brightest_patches</comment>
        <translation>Das Stück {place} hat helle und dunkle Stellen, die hellsten {bright}.</translation>
    </message>
    <message>
        <source>The one {place} is evenly {colour}.</source>
        <comment>brightest_even</comment>
        <translation>Das Stück {place} ist gleichmäßig {colour}.</translation>
    </message>
    <message>
        <source>There are no separate bands; the light is {colours}.</source>
        <comment>no_bands</comment>
        <translation>Es gibt keine einzelnen Streifen; Farben des Lichts: {colours}.</translation>
    </message>
    <message>
        <source>One bright band runs {way}; the light is {colours}.</source>
        <comment>band</comment>
        <translation>Ein heller Streifen verläuft {way}; Farben des Lichts: {colours}.</translation>
    </message>
    <message>
        <source>{count} bright bands run {way}; the light is {colours}.</source>
        <comment>bands</comment>
        <translation>{count} helle Streifen verlaufen {way}; Farben des Lichts: {colours}.</translation>
    </message>
    <message>
        <source>The piece has become brighter than a moment ago: stress grows.</source>
        <comment>grows</comment>
        <translation>Das Stück ist heller als eben noch: Die Spannung wächst.</translation>
    </message>
    <message>
        <source>The piece has become darker than a moment ago: stress fades.</source>
        <comment>fades</comment>
        <translation>Das Stück ist dunkler als eben noch: Die Spannung lässt nach.</translation>
    </message>
    <message>
        <source>As bright as a moment ago, but the pattern has moved.</source>
        <comment>moves</comment>
        <translation>So hell wie eben noch, aber das Muster hat sich verschoben.</translation>
    </message>
    <message>
        <source>Nothing has changed since a moment ago.</source>
        <comment>stays</comment>
        <translation>Seit eben hat sich nichts geändert.</translation>
    </message>
    <message>
        <source>The picture has become brighter than a moment ago.</source>
        <comment>brighter</comment>
        <translation>Das Bild ist heller geworden als eben noch.</translation>
    </message>
    <message>
        <source>The picture has become darker than a moment ago.</source>
        <comment>darker</comment>
        <translation>Das Bild ist dunkler geworden als eben noch.</translation>
    </message>
    <message>
        <source>A crack shows {place}.</source>
        <comment>crack</comment>
        <translation>Ein Riss zeigt sich {place}.</translation>
    </message>
    <message>
        <source>The piece is broken; thin lines show the edges of its fragments.</source>
        <comment>shards</comment>
        <translation>Das Stück ist zerbrochen; dünne Linien zeigen die Ränder der Bruchstücke.</translation>
    </message>
    <message>
        <source>The cut shows pull {pulled}, {pull:.0f} MPa at most, and squeeze {squeezed}, {squeeze:.0f} MPa at most.</source>
        <comment>section</comment>
        <translation>Der Schnitt zeigt Zug {pulled}, höchstens {pull:.0f} MPa, und Druck {squeezed}, höchstens {squeeze:.0f} MPa.</translation>
    </message>
    <message>
        <source>The cut shows pull, {pull:.0f} MPa at most, close beside squeeze, {squeeze:.0f} MPa at most, {pulled}.</source>
        <comment>section.close</comment>
        <translation>Der Schnitt zeigt Zug, höchstens {pull:.0f} MPa, dicht neben Druck, höchstens {squeeze:.0f} MPa, {pulled}.</translation>
    </message>
    <message>
        <source>The cut shows pull {pulled}, {pull:.0f} MPa at most.</source>
        <comment>section.pull</comment>
        <translation>Der Schnitt zeigt Zug {pulled}, höchstens {pull:.0f} MPa.</translation>
    </message>
    <message>
        <source>The cut shows squeeze {squeezed}, {squeeze:.0f} MPa at most.</source>
        <comment>section.squeeze</comment>
        <translation>Der Schnitt zeigt Druck {squeezed}, höchstens {squeeze:.0f} MPa.</translation>
    </message>
    <message>
        <source>Arrows mark pull {pulled} and squeeze {squeezed}.</source>
        <comment>arrows</comment>
        <translation>Pfeile zeigen Zug {pulled} und Druck {squeezed}.</translation>
    </message>
    <message>
        <source>bright</source>
        <comment>level.bright</comment>
        <translation>hell</translation>
    </message>
    <message>
        <source>dimly lit</source>
        <comment>level.dim</comment>
        <translation>schwach hell</translation>
    </message>
    <message>
        <source>along the upper and lower edges</source>
        <comment>place.both_edges</comment>
        <translation>am oberen und unteren Rand</translation>
    </message>
    <message>
        <source>along the upper edge</source>
        <comment>place.top</comment>
        <translation>am oberen Rand</translation>
    </message>
    <message>
        <source>along the lower edge</source>
        <comment>place.bottom</comment>
        <translation>am unteren Rand</translation>
    </message>
    <message>
        <source>along the middle</source>
        <comment>place.middle</comment>
        <translation>entlang der Mitte</translation>
    </message>
    <message>
        <source>at both ends</source>
        <comment>place.both_ends</comment>
        <translation>an beiden Enden</translation>
    </message>
    <message>
        <source>at the left end</source>
        <comment>place.left</comment>
        <translation>am linken Ende</translation>
    </message>
    <message>
        <source>at the right end</source>
        <comment>place.right</comment>
        <translation>am rechten Ende</translation>
    </message>
    <message>
        <source>in the centre</source>
        <comment>place.centre</comment>
        <translation>im Zentrum</translation>
    </message>
    <message>
        <source>half way between the ends</source>
        <comment>place.across</comment>
        <translation>auf halber Länge</translation>
    </message>
    <message>
        <source>near the heated ring</source>
        <comment>place.ring</comment>
        <translation>beim erhitzten Ring</translation>
    </message>
    <message>
        <source>all round the rim</source>
        <comment>place.rim</comment>
        <translation>ringsum am Rand</translation>
    </message>
    <message>
        <source>at the upper left</source>
        <comment>spot.0.0</comment>
        <translation>oben links</translation>
    </message>
    <message>
        <source>at the top</source>
        <comment>spot.1.0</comment>
        <translation>oben</translation>
    </message>
    <message>
        <source>at the upper right</source>
        <comment>spot.2.0</comment>
        <translation>oben rechts</translation>
    </message>
    <message>
        <source>on the left</source>
        <comment>spot.0.1</comment>
        <translation>links</translation>
    </message>
    <message>
        <source>in the middle</source>
        <comment>spot.1.1</comment>
        <translation>in der Mitte</translation>
    </message>
    <message>
        <source>on the right</source>
        <comment>spot.2.1</comment>
        <translation>rechts</translation>
    </message>
    <message>
        <source>at the lower left</source>
        <comment>spot.0.2</comment>
        <translation>unten links</translation>
    </message>
    <message>
        <source>at the bottom</source>
        <comment>spot.1.2</comment>
        <translation>unten</translation>
    </message>
    <message>
        <source>at the lower right</source>
        <comment>spot.2.2</comment>
        <translation>unten rechts</translation>
    </message>
    <message>
        <source>from left to right</source>
        <comment>way.lengthwise</comment>
        <translation>von links nach rechts</translation>
    </message>
    <message>
        <source>from top to bottom</source>
        <comment>way.upright</comment>
        <translation>von oben nach unten</translation>
    </message>
    <message>
        <source>{first}, {last}</source>
        <comment>list</comment>
        <translation>{first}, {last}</translation>
    </message>
    <message>
        <source>{first} and {last}</source>
        <comment>list.last</comment>
        <translation>{first} und {last}</translation>
    </message>
    <message>
        <source>yellow</source>
        <comment>lamp.sodium</comment>
        <translation>gelb</translation>
    </message>
    <message>
        <source>green</source>
        <comment>lamp.green</comment>
        <translation>grün</translation>
    </message>
    <message>
        <source>black</source>
        <comment>colour.black</comment>
        <translation>schwarz</translation>
    </message>
    <message>
        <source>dark grey</source>
        <comment>colour.dark_grey</comment>
        <translation>dunkelgrau</translation>
    </message>
    <message>
        <source>grey</source>
        <comment>colour.grey</comment>
        <translation>grau</translation>
    </message>
    <message>
        <source>pale grey</source>
        <comment>colour.pale_grey</comment>
        <translation>hellgrau</translation>
    </message>
    <message>
        <source>white</source>
        <comment>colour.white</comment>
        <translation>weiß</translation>
    </message>
    <message>
        <source>dark red</source>
        <comment>colour.dark_red</comment>
        <translation>dunkelrot</translation>
    </message>
    <message>
        <source>dark pink</source>
        <comment>colour.dark_pink</comment>
        <translation>dunkelrosa</translation>
    </message>
    <message>
        <source>dark orange</source>
        <comment>colour.dark_orange</comment>
        <translation>dunkelorange</translation>
    </message>
    <message>
        <source>dark yellow</source>
        <comment>colour.dark_yellow</comment>
        <translation>dunkelgelb</translation>
    </message>
    <message>
        <source>dark green</source>
        <comment>colour.dark_green</comment>
        <translation>dunkelgrün</translation>
    </message>
    <message>
        <source>dark blue</source>
        <comment>colour.dark_blue</comment>
        <translation>dunkelblau</translation>
    </message>
    <message>
        <source>dark violet</source>
        <comment>colour.dark_violet</comment>
        <translation>dunkelviolett</translation>
    </message>
    <message>
        <source>red</source>
        <comment>colour.red</comment>
        <translation>rot</translation>
    </message>
    <message>
        <source>pink</source>
        <comment>colour.pink</comment>
        <translation>rosa</translation>
    </message>
    <message>
        <source>orange</source>
        <comment>colour.orange</comment>
        <translation>orange</translation>
    </message>
    <message>
        <source>yellow</source>
        <comment>colour.yellow</comment>
        <translation>gelb</translation>
    </message>
    <message>
        <source>green</source>
        <comment>colour.green</comment>
        <translation>grün</translation>
    </message>
    <message>
        <source>blue</source>
        <comment>colour.blue</comment>
        <translation>blau</translation>
    </message>
    <message>
        <source>violet</source>
        <comment>colour.violet</comment>
        <translation>violett</translation>
    </message>
    <message>
        <source>bright red</source>
        <comment>colour.bright_red</comment>
        <translation>leuchtend rot</translation>
    </message>
    <message>
        <source>bright pink</source>
        <comment>colour.bright_pink</comment>
        <translation>leuchtend rosa</translation>
    </message>
    <message>
        <source>bright orange</source>
        <comment>colour.bright_orange</comment>
        <translation>leuchtend orange</translation>
    </message>
    <message>
        <source>bright yellow</source>
        <comment>colour.bright_yellow</comment>
        <translation>leuchtend gelb</translation>
    </message>
    <message>
        <source>bright green</source>
        <comment>colour.bright_green</comment>
        <translation>leuchtend grün</translation>
    </message>
    <message>
        <source>bright blue</source>
        <comment>colour.bright_blue</comment>
        <translation>leuchtend blau</translation>
    </message>
    <message>
        <source>bright violet</source>
        <comment>colour.bright_violet</comment>
        <translation>leuchtend violett</translation>
    </message>
    <message>
        <source>pale red</source>
        <comment>colour.pale_red</comment>
        <translation>blassrot</translation>
    </message>
    <message>
        <source>pale pink</source>
        <comment>colour.pale_pink</comment>
        <translation>blassrosa</translation>
    </message>
    <message>
        <source>pale orange</source>
        <comment>colour.pale_orange</comment>
        <translation>blassorange</translation>
    </message>
    <message>
        <source>pale yellow</source>
        <comment>colour.pale_yellow</comment>
        <translation>blassgelb</translation>
    </message>
    <message>
        <source>pale green</source>
        <comment>colour.pale_green</comment>
        <translation>blassgrün</translation>
    </message>
    <message>
        <source>pale blue</source>
        <comment>colour.pale_blue</comment>
        <translation>blassblau</translation>
    </message>
    <message>
        <source>pale violet</source>
        <comment>colour.pale_violet</comment>
        <translation>blassviolett</translation>
    </message>
</context>
<context>
    <name>ui</name>
    <message>
        <source>Lehrlight</source>
        <comment>app</comment>
        <translation>Lehrlight</translation>
    </message>
    <message>
        <source>See the stress in glass, as it happens.</source>
        <comment>tagline</comment>
        <translation>Die Spannung im Glas sehen, während sie entsteht.</translation>
    </message>
    <message>
        <source>Present</source>
        <comment>present</comment>
        <translation>Vorführen</translation>
    </message>
    <message>
        <source>One big live picture for your audience, with your controls beside it.</source>
        <comment>present.help</comment>
        <translation>Ein großes Bild in Echtzeit für Ihr Publikum, daneben Ihre Bedienung.</translation>
    </message>
    <message>
        <source>Quit</source>
        <comment>quit</comment>
        <translation>Beenden</translation>
    </message>
    <message>
        <source>Play</source>
        <comment>play</comment>
        <translation>Abspielen</translation>
    </message>
    <message>
        <source>Pause</source>
        <comment>pause</comment>
        <translation>Pause</translation>
    </message>
    <message>
        <source>Run or stand still (Space)</source>
        <comment>play.help</comment>
        <translation>Laufen oder stehen lassen (Leertaste)</translation>
    </message>
    <message>
        <source>Step back</source>
        <comment>back</comment>
        <translation>Schritt zurück</translation>
    </message>
    <message>
        <source>One step earlier (Left arrow)</source>
        <comment>back.help</comment>
        <translation>Einen Schritt früher (Pfeil links)</translation>
    </message>
    <message>
        <source>Step on</source>
        <comment>forward</comment>
        <translation>Schritt weiter</translation>
    </message>
    <message>
        <source>One step later (Right arrow)</source>
        <comment>forward.help</comment>
        <translation>Einen Schritt später (Pfeil rechts)</translation>
    </message>
    <message>
        <source>Reset</source>
        <comment>reset</comment>
        <translation>Neu beginnen</translation>
    </message>
    <message>
        <source>Back to the start of the same run (R)</source>
        <comment>reset.help</comment>
        <translation>Zurück zum Start desselben Laufs (R)</translation>
    </message>
    <message>
        <source>Brighten a faint picture</source>
        <comment>brighten</comment>
        <translation>Schwaches Bild aufhellen</translation>
    </message>
    <message>
        <source>Ten times as bright, and the stage says so (G)</source>
        <comment>brighten.help</comment>
        <translation>Zehnmal so hell, und die Bühne sagt es (G)</translation>
    </message>
    <message>
        <source>Hold picture</source>
        <comment>hold</comment>
        <translation>Bild festhalten</translation>
    </message>
    <message>
        <source>Let go</source>
        <comment>hold.off</comment>
        <translation>Loslassen</translation>
    </message>
    <message>
        <source>Keep this picture beside the next run (H)</source>
        <comment>hold.help</comment>
        <translation>Dieses Bild neben dem nächsten Lauf behalten (H)</translation>
    </message>
    <message>
        <source>Slow replay</source>
        <comment>replay</comment>
        <translation>Zeitlupe</translation>
    </message>
    <message>
        <source>Show the break again at 1/50 of real speed (B)</source>
        <comment>replay.help</comment>
        <translation>Den Bruch mit 1/50 der wirklichen Geschwindigkeit zeigen (B)</translation>
    </message>
    <message>
        <source>Save picture</source>
        <comment>save</comment>
        <translation>Bild sichern</translation>
    </message>
    <message>
        <source>Save this picture as a PNG file in your Pictures folder (Ctrl+S)</source>
        <comment>save.help</comment>
        <translation>Dieses Bild als PNG-Datei im Ordner Bilder sichern (Strg+S)</translation>
    </message>
    <message>
        <source>Saved as {path}</source>
        <comment>saved</comment>
        <translation>Gesichert als {path}</translation>
    </message>
    <message>
        <source>Could not save the picture: {problem}</source>
        <comment>unsaved</comment>
        <translation>Das Bild ließ sich nicht sichern: {problem}</translation>
    </message>
    <message>
        <source>Time</source>
        <comment>time</comment>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>Drag to go back to any instant of this run</source>
        <comment>time.help</comment>
        <translation>Ziehen, um zu einem Augenblick dieses Laufs zurückzugehen</translation>
    </message>
    <message>
        <source>Speed</source>
        <comment>speed</comment>
        <translation>Tempo</translation>
    </message>
    <message>
        <source>How fast the model's time runs (Up and Down arrows)</source>
        <comment>speed.help</comment>
        <translation>Wie schnell die Zeit des Modells läuft (Pfeile auf und ab)</translation>
    </message>
    <message>
        <source>real speed</source>
        <comment>speed.real</comment>
        <translation>wirkliches Tempo</translation>
    </message>
    <message>
        <source>1/{part} of real speed</source>
        <comment>speed.slow</comment>
        <translation>1/{part} des wirklichen Tempos</translation>
    </message>
    <message>
        <source>{times} × real speed</source>
        <comment>speed.fast</comment>
        <translation>{times} × wirkliches Tempo</translation>
    </message>
    <message>
        <source>{speed}; this machine reaches {real}</source>
        <comment>speed.behind</comment>
        <translation>{speed}; dieser Rechner schafft {real}</translation>
    </message>
    <message>
        <source>Scene</source>
        <comment>scene</comment>
        <translation>Szene</translation>
    </message>
    <message>
        <source>The scene {scene} cannot be shown: {problem}</source>
        <comment>unloaded</comment>
        <translation>Die Szene {scene} lässt sich nicht zeigen: {problem}</translation>
    </message>
    <message>
        <source>Run</source>
        <comment>page.run</comment>
        <translation>Lauf</translation>
    </message>
    <message>
        <source>Piece</source>
        <comment>page.piece</comment>
        <translation>Stück</translation>
    </message>
    <message>
        <source>View</source>
        <comment>page.light</comment>
        <translation>Ansicht</translation>
    </message>
    <message>
        <source>Numbers</source>
        <comment>page.numbers</comment>
        <translation>Zahlen</translation>
    </message>
    <message>
        <source>A change here starts the run again.</source>
        <comment>piece.note</comment>
        <translation>Eine Änderung hier beginnt den Lauf von vorn.</translation>
    </message>
    <message>
        <source>Back to the defaults</source>
        <comment>defaults</comment>
        <translation>Zurück zu den Grundwerten</translation>
    </message>
    <message>
        <source>Turn the polarizers</source>
        <comment>light.turn</comment>
        <translation>Polarisatoren drehen</translation>
    </message>
    <message>
        <source>Angle of the pair of polarizers ([ and ])</source>
        <comment>light.turn.help</comment>
        <translation>Winkel des Polarisatorpaars ([ und ])</translation>
    </message>
    <message>
        <source>Parallel polarizers (bright field)</source>
        <comment>light.parallel</comment>
        <translation>Parallele Polarisatoren (Hellfeld)</translation>
    </message>
    <message>
        <source>Off: crossed, so that unstressed glass is dark (X)</source>
        <comment>light.parallel.help</comment>
        <translation>Aus: gekreuzt, sodass spannungsfreies Glas dunkel ist (X)</translation>
    </message>
    <message>
        <source>Quarter-wave plates (no dark crosses)</source>
        <comment>light.quarter</comment>
        <translation>Viertelwellenplatten (keine dunklen Kreuze)</translation>
    </message>
    <message>
        <source>Circular light: the direction of the stress no longer counts (Q)</source>
        <comment>light.quarter.help</comment>
        <translation>Zirkulares Licht: Die Richtung der Spannung zählt nicht mehr (Q)</translation>
    </message>
    <message>
        <source>Tint plate</source>
        <comment>light.tint</comment>
        <translation>Lambda-Platte</translation>
    </message>
    <message>
        <source>Full-wave plate: small stresses show as colours, the sign too (T)</source>
        <comment>light.tint.help</comment>
        <translation>Vollwellenplatte: Kleine Spannungen zeigen sich als Farben, auch das Vorzeichen (T)</translation>
    </message>
    <message>
        <source>Lamp</source>
        <comment>light.lamp</comment>
        <translation>Lampe</translation>
    </message>
    <message>
        <source>White light or one colour</source>
        <comment>light.lamp.help</comment>
        <translation>Weißes Licht oder eine Farbe</translation>
    </message>
    <message>
        <source>Gain</source>
        <comment>light.gain</comment>
        <translation>Verstärkung</translation>
    </message>
    <message>
        <source>Brightens the picture; the stage says so whenever it is not 1</source>
        <comment>light.gain.help</comment>
        <translation>Hellt das Bild auf; die Bühne sagt es, wenn sie nicht 1 ist</translation>
    </message>
    <message>
        <source>Section shows</source>
        <comment>section.choice</comment>
        <translation>Schnitt zeigt</translation>
    </message>
    <message>
        <source>What the colours of the section mean (S)</source>
        <comment>section.choice.help</comment>
        <translation>Was die Farben des Schnitts bedeuten (S)</translation>
    </message>
    <message>
        <source>Cut through the wall</source>
        <comment>section.title</comment>
        <translation>Schnitt durch die Wand</translation>
    </message>
    <message>
        <source>stress {name}</source>
        <comment>section.stress</comment>
        <translation>Spannung {name}</translation>
    </message>
    <message>
        <source>temperature</source>
        <comment>section.heat</comment>
        <translation>Temperatur</translation>
    </message>
    <message>
        <source>movement drawn {times} ×, really {really}</source>
        <comment>section.swell</comment>
        <translation>Bewegung {times} × gezeichnet, wirklich {really}</translation>
    </message>
    <message>
        <source>wall drawn {times} × thicker</source>
        <comment>section.thick</comment>
        <translation>Wand {times} × dicker gezeichnet</translation>
    </message>
    <message>
        <source>Chart shows</source>
        <comment>chart.choice</comment>
        <translation>Diagramm zeigt</translation>
    </message>
    <message>
        <source>Which of the curves the chart shows</source>
        <comment>chart.choice.help</comment>
        <translation>Welche der Kurven das Diagramm zeigt</translation>
    </message>
    <message>
        <source>time</source>
        <comment>chart.time</comment>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>pulled</source>
        <comment>tension</comment>
        <translation>Zug</translation>
    </message>
    <message>
        <source>squeezed</source>
        <comment>compression</comment>
        <translation>Druck</translation>
    </message>
    <message>
        <source>water drop</source>
        <comment>mark.drop</comment>
        <translation>Wassertropfen</translation>
    </message>
    <message>
        <source>flame</source>
        <comment>mark.flame</comment>
        <translation>Flamme</translation>
    </message>
    <message>
        <source>score</source>
        <comment>mark.score</comment>
        <translation>Anriss</translation>
    </message>
    <message>
        <source>hot ring</source>
        <comment>mark.ring</comment>
        <translation>heißer Ring</translation>
    </message>
    <message>
        <source>crack</source>
        <comment>mark.crack</comment>
        <translation>Riss</translation>
    </message>
    <message>
        <source>squeezed</source>
        <comment>mark.squeeze</comment>
        <translation>Druck</translation>
    </message>
    <message>
        <source>pulled</source>
        <comment>mark.pull</comment>
        <translation>Zug</translation>
    </message>
    <message>
        <source>plate adds</source>
        <comment>strip.adds</comment>
        <translation>Platte addiert</translation>
    </message>
    <message>
        <source>plate takes away</source>
        <comment>strip.takes</comment>
        <translation>Platte zieht ab</translation>
    </message>
    <message>
        <source>brightened {gain} ×</source>
        <comment>gain</comment>
        <translation>{gain} × aufgehellt</translation>
    </message>
    <message>
        <source>Held at {time}</source>
        <comment>held</comment>
        <translation>Festgehalten bei {time}</translation>
    </message>
    <message>
        <source>Now</source>
        <comment>held.now</comment>
        <translation>Jetzt</translation>
    </message>
    <message>
        <source>{label}: {then} → {now}</source>
        <comment>held.change</comment>
        <translation>{label}: {then} → {now}</translation>
    </message>
    <message>
        <source>same settings</source>
        <comment>held.same</comment>
        <translation>gleiche Werte</translation>
    </message>
    <message>
        <source>yes</source>
        <comment>yes</comment>
        <translation>ja</translation>
    </message>
    <message>
        <source>no</source>
        <comment>no</comment>
        <translation>nein</translation>
    </message>
    <message>
        <source>–</source>
        <comment>none</comment>
        <translation>–</translation>
    </message>
    <message>
        <source>{percent} %</source>
        <comment>odds</comment>
        <translation>{percent} %</translation>
    </message>
    <message>
        <source>under {percent} %</source>
        <comment>odds.under</comment>
        <translation>unter {percent} %</translation>
    </message>
    <message>
        <source>over {percent} %</source>
        <comment>odds.over</comment>
        <translation>über {percent} %</translation>
    </message>
    <message>
        <source>Something went wrong and the scene was reset: {problem}</source>
        <comment>reset.fault</comment>
        <translation>Etwas ging schief, und die Szene wurde neu begonnen: {problem}</translation>
    </message>
    <message>
        <source>Space play · ← → step · ↑ ↓ speed · R reset · H hold · B replay · D first button of the scene · 1 to 9 each of them · S section · G brighten · [ ] turn · X crossed or parallel · Q quarter-wave plates · T tint plate · Ctrl+S save · F1 these keys · F2 controls · F11 full screen</source>
        <comment>keys</comment>
        <translation>Leertaste abspielen · ← → Schritt · ↑ ↓ Tempo · R neu beginnen · H festhalten · B Zeitlupe · D erster Knopf der Szene · 1 bis 9 jeder von ihnen · S Schnitt · G aufhellen · [ ] drehen · X gekreuzt oder parallel · Q Viertelwellenplatten · T Lambda-Platte · Strg+S sichern · F1 diese Tasten · F2 Bedienung · F11 Vollbild</translation>
    </message>
    <message>
        <source>Audience</source>
        <comment>audience.title</comment>
        <translation>Publikum</translation>
    </message>
    <message>
        <source>{sign} Right</source>
        <comment>audience.right</comment>
        <translation>{sign} Richtig</translation>
    </message>
    <message>
        <source>{count} hand</source>
        <comment>audience.hand</comment>
        <translation>{count} Hand</translation>
    </message>
    <message>
        <source>{count} hands</source>
        <comment>audience.hands</comment>
        <translation>{count} Hände</translation>
    </message>
    <message>
        <source>What happened: {what}</source>
        <comment>audience.happened</comment>
        <translation>Was geschah: {what}</translation>
    </message>
    <message>
        <source>The audience sees {name}.</source>
        <comment>audience.two</comment>
        <translation>Das Publikum sieht {name}.</translation>
    </message>
    <message>
        <source>One screen: the audience sees this window.</source>
        <comment>audience.one</comment>
        <translation>Ein Bildschirm: Das Publikum sieht dieses Fenster.</translation>
    </message>
    <message>
        <source>Projector gone: your show goes on here.</source>
        <comment>audience.gone</comment>
        <translation>Projektor fort: Die Vorführung geht hier weiter.</translation>
    </message>
    <message>
        <source>The picture does not reach {name}: press Windows+P or look at the cable, then choose the screen again.</source>
        <comment>audience.unplaced</comment>
        <translation>Das Bild erreicht {name} nicht: Windows+P drücken oder das Kabel prüfen, dann den Bildschirm neu wählen.</translation>
    </message>
    <message>
        <source>What to say, to hold and to mind</source>
        <comment>show.prompts</comment>
        <translation>Was zu sagen, zu halten und zu beachten ist</translation>
    </message>
    <message>
        <source>In your hand: {what}</source>
        <comment>show.hold</comment>
        <translation>In der Hand: {what}</translation>
    </message>
    <message>
        <source>Ask for a helper. Brief: {briefing} · Eyewear: {eyewear} · Stands: {place} · Way out: {exit}</source>
        <comment>show.helper</comment>
        <translation>Um eine Hilfe bitten. Einweisung: {briefing} · Schutzbrille: {eyewear} · Platz: {place} · Ausgang: {exit}</translation>
    </message>
    <message>
        <source>This is the last step.</source>
        <comment>show.last</comment>
        <translation>Das ist der letzte Schritt.</translation>
    </message>
    <message>
        <source>Next: {title}</source>
        <comment>show.coming</comment>
        <translation>Danach: {title}</translation>
    </message>
    <message>
        <source>Next: {title} – take {hold}</source>
        <comment>show.coming.hold</comment>
        <translation>Danach: {title} – {hold} nehmen</translation>
    </message>
    <message>
        <source>clock</source>
        <comment>show.clock</comment>
        <translation>Uhrzeit</translation>
    </message>
    <message>
        <source>left in this step</source>
        <comment>show.step_left</comment>
        <translation>übrig in diesem Schritt</translation>
    </message>
    <message>
        <source>left in all</source>
        <comment>show.all_left</comment>
        <translation>übrig insgesamt</translation>
    </message>
    <message>
        <source>late by {time}</source>
        <comment>show.late</comment>
        <translation>{time} zu spät</translation>
    </message>
    <message>
        <source>It is {clock}; left in this step {step}, in all {all}</source>
        <comment>show.clock.spoken</comment>
        <translation>Es ist {clock}; übrig in diesem Schritt {step}, insgesamt {all}</translation>
    </message>
    <message>
        <source>Steps</source>
        <comment>show.steps</comment>
        <translation>Schritte</translation>
    </message>
    <message>
        <source>{spent} of {planned}</source>
        <comment>show.step.spent</comment>
        <translation>{spent} von {planned}</translation>
    </message>
    <message>
        <source>cut</source>
        <comment>show.step.cut</comment>
        <translation>gestrichen</translation>
    </message>
    <message>
        <source>must stay</source>
        <comment>priority.1</comment>
        <translation>muss bleiben</translation>
    </message>
    <message>
        <source>should stay</source>
        <comment>priority.2</comment>
        <translation>soll bleiben</translation>
    </message>
    <message>
        <source>may go</source>
        <comment>priority.3</comment>
        <translation>darf weg</translation>
    </message>
    <message>
        <source>One hand more for {answer}</source>
        <comment>hands.more</comment>
        <translation>Eine Hand mehr für {answer}</translation>
    </message>
    <message>
        <source>One hand less for {answer}</source>
        <comment>hands.less</comment>
        <translation>Eine Hand weniger für {answer}</translation>
    </message>
    <message>
        <source>The audience sees: {state}</source>
        <comment>mirror</comment>
        <translation>Das Publikum sieht: {state}</translation>
    </message>
    <message>
        <source>open flame</source>
        <comment>hazard.flame</comment>
        <translation>offene Flamme</translation>
    </message>
    <message>
        <source>hot glass</source>
        <comment>hazard.hot-glass</comment>
        <translation>heißes Glas</translation>
    </message>
    <message>
        <source>breaking glass</source>
        <comment>hazard.breakage</comment>
        <translation>brechendes Glas</translation>
    </message>
    <message>
        <source>sharp edges</source>
        <comment>hazard.sharp-edges</comment>
        <translation>scharfe Kanten</translation>
    </message>
    <message>
        <source>hot water</source>
        <comment>hazard.hot-water</comment>
        <translation>heißes Wasser</translation>
    </message>
    <message>
        <source>piece with stored energy</source>
        <comment>hazard.stored-energy</comment>
        <translation>Stück mit gespeicherter Energie</translation>
    </message>
    <message>
        <source>◀ Back</source>
        <comment>header.back</comment>
        <translation>◀ Zurück</translation>
    </message>
    <message>
        <source>The step or part of a step before (Page up)</source>
        <comment>header.back.help</comment>
        <translation>Der Schritt oder Teil davor (Bild auf)</translation>
    </message>
    <message>
        <source>Next ▶</source>
        <comment>header.next</comment>
        <translation>Weiter ▶</translation>
    </message>
    <message>
        <source>The next part of this step, then the next step (Page down)</source>
        <comment>header.next.help</comment>
        <translation>Der nächste Teil dieses Schritts, dann der nächste Schritt (Bild ab)</translation>
    </message>
    <message>
        <source>Blank</source>
        <comment>header.blank</comment>
        <translation>Dunkel</translation>
    </message>
    <message>
        <source>A dark picture for the audience, and back (B or full stop)</source>
        <comment>header.blank.help</comment>
        <translation>Ein dunkles Bild für das Publikum, und zurück (B oder Punkt)</translation>
    </message>
    <message>
        <source>Freeze</source>
        <comment>header.freeze</comment>
        <translation>Standbild</translation>
    </message>
    <message>
        <source>The audience keeps this picture while you change things (Z)</source>
        <comment>header.freeze.help</comment>
        <translation>Das Publikum behält dieses Bild, während Sie etwas ändern (Z)</translation>
    </message>
    <message>
        <source>Return</source>
        <comment>header.return</comment>
        <translation>Zurückholen</translation>
    </message>
    <message>
        <source>Put back exactly what this step showed before you changed it (F)</source>
        <comment>header.return.help</comment>
        <translation>Genau das zurückholen, was dieser Schritt vor Ihren Änderungen zeigte (F)</translation>
    </message>
    <message>
        <source>More</source>
        <comment>header.strip</comment>
        <translation>Mehr</translation>
    </message>
    <message>
        <source>Strip of actions (F5 or Esc)</source>
        <comment>header.strip.help</comment>
        <translation>Leiste der Aktionen (F5 oder Esc)</translation>
    </message>
    <message>
        <source>Notes</source>
        <comment>header.notes</comment>
        <translation>Notizen</translation>
    </message>
    <message>
        <source>Page</source>
        <comment>header.page</comment>
        <translation>Seite</translation>
    </message>
    <message>
        <source>Show</source>
        <comment>page.show</comment>
        <translation>Vorführung</translation>
    </message>
    <message>
        <source>Steps</source>
        <comment>page.steps</comment>
        <translation>Schritte</translation>
    </message>
    <message>
        <source>Before</source>
        <comment>page.before</comment>
        <translation>Vorher</translation>
    </message>
    <message>
        <source>Between</source>
        <comment>page.between</comment>
        <translation>Dazwischen</translation>
    </message>
    <message>
        <source>After</source>
        <comment>page.after</comment>
        <translation>Nachher</translation>
    </message>
    <message>
        <source>Keys</source>
        <comment>page.keys</comment>
        <translation>Tasten</translation>
    </message>
    <message>
        <source>Begin the show ▶</source>
        <comment>next.begin</comment>
        <translation>Vorführung beginnen ▶</translation>
    </message>
    <message>
        <source>Put the question ▶</source>
        <comment>next.ask</comment>
        <translation>Frage stellen ▶</translation>
    </message>
    <message>
        <source>Count hands ▶</source>
        <comment>next.count</comment>
        <translation>Hände zählen ▶</translation>
    </message>
    <message>
        <source>Show the bars ▶</source>
        <comment>next.bars</comment>
        <translation>Balken zeigen ▶</translation>
    </message>
    <message>
        <source>Let it happen ▶</source>
        <comment>next.reveal</comment>
        <translation>Geschehen lassen ▶</translation>
    </message>
    <message>
        <source>Show who was right ▶</source>
        <comment>next.result</comment>
        <translation>Zeigen, wer recht hatte ▶</translation>
    </message>
    <message>
        <source>{number}  {title} ▶</source>
        <comment>next.step</comment>
        <translation>{number}  {title} ▶</translation>
    </message>
    <message>
        <source>This is the last step</source>
        <comment>next.none</comment>
        <translation>Das ist der letzte Schritt</translation>
    </message>
    <message>
        <source>{reading}: {value}</source>
        <comment>outcome</comment>
        <translation>{reading}: {value}</translation>
    </message>
    <message>
        <source>Please do not try this at home.</source>
        <comment>welcome.home</comment>
        <translation>Bitte nicht zu Hause nachmachen.</translation>
    </message>
    <message>
        <source>Live</source>
        <comment>audience.state.live</comment>
        <translation>Live</translation>
    </message>
    <message>
        <source>Live: the answer</source>
        <comment>audience.state.reveal</comment>
        <translation>Live: die Antwort</translation>
    </message>
    <message>
        <source>Frozen</source>
        <comment>audience.state.frozen</comment>
        <translation>Standbild</translation>
    </message>
    <message>
        <source>Blank</source>
        <comment>audience.state.blank</comment>
        <translation>Dunkel</translation>
    </message>
    <message>
        <source>Question</source>
        <comment>audience.state.question</comment>
        <translation>Frage</translation>
    </message>
    <message>
        <source>Card</source>
        <comment>audience.state.card</comment>
        <translation>Karte</translation>
    </message>
    <message>
        <source>Projector card</source>
        <comment>audience.state.widget</comment>
        <translation>Projektorkarte</translation>
    </message>
    <message>
        <source>We stop here for a moment</source>
        <comment>emergency.title</comment>
        <translation>Wir machen hier eine kurze Pause</translation>
    </message>
    <message>
        <source>Please keep calm and listen.</source>
        <comment>emergency.stay</comment>
        <translation>Bitte bleiben Sie ruhig und hören Sie zu.</translation>
    </message>
    <message>
        <source>Please do what the staff ask you to.</source>
        <comment>emergency.follow</comment>
        <translation>Bitte folgen Sie den Hinweisen des Personals.</translation>
    </message>
    <message>
        <source>⚠ Emergency: the audience reads a calm card, the model stands still</source>
        <comment>emergency.presenter</comment>
        <translation>⚠ Notfall: Das Publikum liest eine ruhige Karte, das Modell steht still</translation>
    </message>
    <message>
        <source>not written down</source>
        <comment>emergency.missing</comment>
        <translation>nicht aufgeschrieben</translation>
    </message>
    <message>
        <source>The same key, or the entry of the strip, goes back to the show.</source>
        <comment>emergency.back</comment>
        <translation>Dieselbe Taste oder der Eintrag der Leiste führt zur Vorführung zurück.</translation>
    </message>
    <message>
        <source>This step has no other way written down.</source>
        <comment>contingency.none</comment>
        <translation>Für diesen Schritt ist kein anderer Weg aufgeschrieben.</translation>
    </message>
    <message>
        <source>No catch-up line is written down so far.</source>
        <comment>catch_up.none</comment>
        <translation>Bisher ist kein Satz zum Aufholen aufgeschrieben.</translation>
    </message>
    <message>
        <source>Kept as favourite {number}</source>
        <comment>favourite.stored</comment>
        <translation>Als Favorit {number} behalten</translation>
    </message>
    <message>
        <source>There is no favourite {number} yet: Alt+Shift+{number} keeps this state</source>
        <comment>favourite.none</comment>
        <translation>Favorit {number} gibt es noch nicht: Alt+Umschalt+{number} behält diesen Zustand</translation>
    </message>
    <message>
        <source>Nothing was changed by hand in this step.</source>
        <comment>return.nothing</comment>
        <translation>In diesem Schritt wurde nichts von Hand geändert.</translation>
    </message>
    <message>
        <source>{title}: {done} of {all}</source>
        <comment>ticks</comment>
        <translation>{title}: {done} von {all}</translation>
    </message>
    <message>
        <source>Time there is</source>
        <comment>before.minutes</comment>
        <translation>Verfügbare Zeit</translation>
    </message>
    <message>
        <source>Less than the sheet asks for: the steps that may go are cut</source>
        <comment>before.minutes.help</comment>
        <translation>Weniger, als der Ablauf verlangt: Schritte, die wegdürfen, werden gestrichen</translation>
    </message>
    <message>
        <source>Left out: {steps}</source>
        <comment>before.cut</comment>
        <translation>Ausgelassen: {steps}</translation>
    </message>
    <message>
        <source>Every step is shown.</source>
        <comment>before.cut.none</comment>
        <translation>Jeder Schritt wird gezeigt.</translation>
    </message>
    <message>
        <source>Even the steps that must stay take {seconds} s more than there is.</source>
        <comment>before.cut.missing</comment>
        <translation>Schon die Schritte, die bleiben müssen, brauchen {seconds} s mehr als da ist.</translation>
    </message>
    <message>
        <source>Rehearsal: time each step and propose a cut</source>
        <comment>before.rehearsal</comment>
        <translation>Probe: jeden Schritt messen und eine Kürzung vorschlagen</translation>
    </message>
    <message>
        <source>Projector card on the audience's screen</source>
        <comment>before.card</comment>
        <translation>Projektorkarte auf dem Bildschirm des Publikums</translation>
    </message>
    <message>
        <source>Props</source>
        <comment>before.props</comment>
        <translation>Requisiten</translation>
    </message>
    <message>
        <source>Samples</source>
        <comment>before.samples</comment>
        <translation>Proben</translation>
    </message>
    <message>
        <source>Eyewear</source>
        <comment>before.eyewear</comment>
        <translation>Schutzbrillen</translation>
    </message>
    <message>
        <source>Helpers</source>
        <comment>before.helpers</comment>
        <translation>Hilfen aus dem Publikum</translation>
    </message>
    <message>
        <source>Cautions</source>
        <comment>before.cautions</comment>
        <translation>Vorsicht</translation>
    </message>
    <message>
        <source>The venue's rules</source>
        <comment>venue.title</comment>
        <translation>Regeln des Hauses</translation>
    </message>
    <message>
        <source>A review holds for (days)</source>
        <comment>venue.days</comment>
        <translation>Eine Prüfung gilt (Tage)</translation>
    </message>
    <message>
        <source>As your assessment says; without it no review counts.</source>
        <comment>venue.days.ask</comment>
        <translation>Wie Ihre Gefährdungsbeurteilung sagt; ohne Angabe gilt keine Prüfung.</translation>
    </message>
    <message>
        <source>Write whole days, 1 to 3660</source>
        <comment>venue.days.wrong</comment>
        <translation>Ganze Tage schreiben, 1 bis 3660</translation>
    </message>
    <message>
        <source>Role that has reviewed what stands above today, no name</source>
        <comment>venue.role</comment>
        <translation>Rolle, die das Obige heute geprüft hat, kein Name</translation>
    </message>
    <message>
        <source>Reviewed today</source>
        <comment>venue.reviewed</comment>
        <translation>Heute geprüft</translation>
    </message>
    <message>
        <source>No rule has a value yet: write them first</source>
        <comment>venue.nothing</comment>
        <translation>Noch hat keine Regel einen Wert: zuerst eintragen</translation>
    </message>
    <message>
        <source>Turnaround begins</source>
        <comment>between.start</comment>
        <translation>Umbau beginnt</translation>
    </message>
    <message>
        <source>Turnaround: {time}</source>
        <comment>between.clock</comment>
        <translation>Umbau: {time}</translation>
    </message>
    <message>
        <source>Put back</source>
        <comment>between.reset</comment>
        <translation>Zurückstellen</translation>
    </message>
    <message>
        <source>Glass counted out and in</source>
        <comment>between.pieces</comment>
        <translation>Glas, hinaus- und hereingezählt</translation>
    </message>
    <message>
        <source>Batch</source>
        <comment>between.batch</comment>
        <translation>Charge</translation>
    </message>
    <message>
        <source>Pieces</source>
        <comment>between.number</comment>
        <translation>Stücke</translation>
    </message>
    <message>
        <source>Out</source>
        <comment>between.out</comment>
        <translation>Hinaus</translation>
    </message>
    <message>
        <source>Back</source>
        <comment>between.back</comment>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Broken</source>
        <comment>between.broken</comment>
        <translation>Zerbrochen</translation>
    </message>
    <message>
        <source>New</source>
        <comment>between.delivered</comment>
        <translation>Neu</translation>
    </message>
    <message>
        <source>{batch}: {number} in stock</source>
        <comment>between.stock</comment>
        <translation>{batch}: {number} auf Lager</translation>
    </message>
    <message>
        <source>Nothing was counted out for this show.</source>
        <comment>between.none</comment>
        <translation>Für diese Vorführung wurde nichts hinausgezählt.</translation>
    </message>
    <message>
        <source>No batch is known yet: write one below.</source>
        <comment>between.no_batch</comment>
        <translation>Noch ist keine Charge bekannt: unten eine eintragen.</translation>
    </message>
    <message>
        <source>New batch: name; kind; glass; thickness in mm</source>
        <comment>between.new_batch</comment>
        <translation>Neue Charge: Name; Art; Glas; Dicke in mm</translation>
    </message>
    <message>
        <source>Write name; kind; glass; thickness in mm – such as A1; bottles; soda-lime; 3</source>
        <comment>between.batch_form</comment>
        <translation>Name; Art; Glas; Dicke in mm schreiben – etwa A1; Flaschen; Kalknatron; 3</translation>
    </message>
    <message>
        <source>Hot piece</source>
        <comment>between.hot.title</comment>
        <translation>Heißes Stück</translation>
    </message>
    <message>
        <source>Put down hot now</source>
        <comment>between.hot</comment>
        <translation>Jetzt heiß abgelegt</translation>
    </message>
    <message>
        <source>For the journal</source>
        <comment>after.title</comment>
        <translation>Für das Tagebuch</translation>
    </message>
    <message>
        <source>People in the audience</source>
        <comment>after.heads</comment>
        <translation>Menschen im Publikum</translation>
    </message>
    <message>
        <source>Write down</source>
        <comment>after.count</comment>
        <translation>Eintragen</translation>
    </message>
    <message>
        <source>An odd question, in one line</source>
        <comment>after.question</comment>
        <translation>Eine ungewöhnliche Frage, in einer Zeile</translation>
    </message>
    <message>
        <source>A near miss: what, and where</source>
        <comment>after.miss</comment>
        <translation>Ein Beinahe-Unfall: was und wo</translation>
    </message>
    <message>
        <source>What broke</source>
        <comment>after.breakage</comment>
        <translation>Was zerbrach</translation>
    </message>
    <message>
        <source>It was meant to break</source>
        <comment>after.meant</comment>
        <translation>Es sollte brechen</translation>
    </message>
    <message>
        <source>Kind of note</source>
        <comment>after.kind</comment>
        <translation>Art der Notiz</translation>
    </message>
    <message>
        <source>A note</source>
        <comment>after.note</comment>
        <translation>Eine Notiz</translation>
    </message>
    <message>
        <source>Take</source>
        <comment>after.take</comment>
        <translation>Übernehmen</translation>
    </message>
    <message>
        <source>End this show</source>
        <comment>after.end</comment>
        <translation>Diese Vorführung beenden</translation>
    </message>
    <message>
        <source>Save handover page</source>
        <comment>after.handover</comment>
        <translation>Übergabeblatt sichern</translation>
    </message>
    <message>
        <source>{kind}: {text}</source>
        <comment>after.taken</comment>
        <translation>{kind}: {text}</translation>
    </message>
    <message>
        <source>The audience's screen</source>
        <comment>screens.title</comment>
        <translation>Der Bildschirm des Publikums</translation>
    </message>
    <message>
        <source>Change the two windows' screens</source>
        <comment>screens.swap</comment>
        <translation>Bildschirme der beiden Fenster tauschen</translation>
    </message>
    <message>
        <source>How both windows look</source>
        <comment>screens.look</comment>
        <translation>Aussehen beider Fenster</translation>
    </message>
    <message>
        <source>Calm: soften bright stripes and sudden changes</source>
        <comment>screens.calm</comment>
        <translation>Ruhig: helle Streifen und plötzliche Wechsel dämpfen</translation>
    </message>
    <message>
        <source>For people who react to stripes and flashes. The stage says when a picture is softened.</source>
        <comment>screens.calm.help</comment>
        <translation>Für Menschen, die auf Streifen und Blitze reagieren. Die Bühne sagt, wenn ein Bild gedämpft ist.</translation>
    </message>
    <message>
        <source>No fading from one picture to the next</source>
        <comment>screens.still</comment>
        <translation>Kein Überblenden von Bild zu Bild</translation>
    </message>
    <message>
        <source>High contrast</source>
        <comment>screens.high_contrast</comment>
        <translation>Hoher Kontrast</translation>
    </message>
    <message>
        <source>Size of all words</source>
        <comment>screens.scale</comment>
        <translation>Größe aller Wörter</translation>
    </message>
    <message>
        <source>{times} ×</source>
        <comment>screens.times</comment>
        <translation>{times} ×</translation>
    </message>
    <message>
        <source>Second language of the captions</source>
        <comment>screens.second</comment>
        <translation>Zweite Sprache der Untertitel</translation>
    </message>
    <message>
        <source>none</source>
        <comment>screens.no_second</comment>
        <translation>keine</translation>
    </message>
    <message>
        <source>Screens</source>
        <comment>page.screens</comment>
        <translation>Bildschirme</translation>
    </message>
    <message>
        <source>Fit into the time left</source>
        <comment>steps.fit</comment>
        <translation>In die übrige Zeit einpassen</translation>
    </message>
    <message>
        <source>Take every step in again</source>
        <comment>steps.whole</comment>
        <translation>Alle Schritte wieder aufnehmen</translation>
    </message>
    <message>
        <source>Save this state as a step</source>
        <comment>steps.save</comment>
        <translation>Diesen Zustand als Schritt sichern</translation>
    </message>
    <message>
        <source>{title} took {took} of {planned}</source>
        <comment>steps.pace</comment>
        <translation>{title} brauchte {took} von {planned}</translation>
    </message>
    <message>
        <source>Rehearsed so far: {paces}. To fit the slot, leave out: {dropped}</source>
        <comment>steps.rehearsed</comment>
        <translation>Bisher geprobt: {paces}. Damit es passt, auslassen: {dropped}</translation>
    </message>
    <message>
        <source>Which show?</source>
        <comment>choose.title</comment>
        <translation>Welche Vorführung?</translation>
    </message>
    <message>
        <source>{minutes} min · {steps} steps · {hazards}</source>
        <comment>choose.sheet</comment>
        <translation>{minutes} min · {steps} Schritte · {hazards}</translation>
    </message>
    <message>
        <source>no flame, no breakage</source>
        <comment>choose.no_hazard</comment>
        <translation>keine Flamme, kein Bruch</translation>
    </message>
    <message>
        <source>Scenes without a sheet</source>
        <comment>choose.free</comment>
        <translation>Szenen ohne Ablauf</translation>
    </message>
    <message>
        <source>Every scene to choose from, no clock, no notes.</source>
        <comment>choose.free.help</comment>
        <translation>Jede Szene wählbar, keine Uhr, keine Notizen.</translation>
    </message>
    <message>
        <source>Go on: {title}</source>
        <comment>choose.go_on</comment>
        <translation>Weitermachen: {title}</translation>
    </message>
    <message>
        <source>{sheet} was interrupted; {spent} of it are over.</source>
        <comment>choose.go_on.help</comment>
        <translation>{sheet} wurde unterbrochen; {spent} davon sind vorbei.</translation>
    </message>
    <message>
        <source>Open another sheet …</source>
        <comment>choose.other</comment>
        <translation>Anderen Ablauf öffnen …</translation>
    </message>
    <message>
        <source>A show is running: close the window again within {seconds} s to leave it. It can be gone on with.</source>
        <comment>close.again</comment>
        <translation>Eine Vorführung läuft: Das Fenster innerhalb von {seconds} s noch einmal schließen, um sie zu verlassen. Sie lässt sich fortsetzen.</translation>
    </message>
    <message>
        <source>Nothing can be saved: the data folder cannot be written. The show goes on.</source>
        <comment>keeping.none</comment>
        <translation>Nichts lässt sich sichern: Der Datenordner ist nicht beschreibbar. Die Vorführung geht weiter.</translation>
    </message>
    <message>
        <source>There is no sheet to save a step in</source>
        <comment>step.no_sheet</comment>
        <translation>Es gibt keinen Ablauf, in dem ein Schritt zu sichern wäre</translation>
    </message>
    <message>
        <source>Saved as the last step of {sheet}; its words are still to be written</source>
        <comment>step.saved</comment>
        <translation>Als letzter Schritt von {sheet} gesichert; seine Worte sind noch zu schreiben</translation>
    </message>
    <message>
        <source>The sheet has a mistake and stays as it was: {problem}</source>
        <comment>sheet.broken</comment>
        <translation>Der Ablauf hat einen Fehler und bleibt, wie er war: {problem}</translation>
    </message>
    <message>
        <source>The sheet was saved and has been read again.</source>
        <comment>sheet.reloaded</comment>
        <translation>Der Ablauf wurde gesichert und neu gelesen.</translation>
    </message>
    <message>
        <source>written to the disk</source>
        <comment>journal.disk</comment>
        <translation>auf die Platte geschrieben</translation>
    </message>
    <message>
        <source>kept in memory alone: the disk cannot be written</source>
        <comment>journal.memory</comment>
        <translation>nur im Speicher gehalten: Die Platte ist nicht beschreibbar</translation>
    </message>
    <message>
        <source>Show {show} of the journal, {place}. Roles only, no names.</source>
        <comment>journal.line</comment>
        <translation>Vorführung {show} des Tagebuchs, {place}. Nur Rollen, keine Namen.</translation>
    </message>
    <message>
        <source>No show has begun yet: there is nothing to write it to</source>
        <comment>journal.no_show</comment>
        <translation>Noch hat keine Vorführung begonnen, zu der es gehören könnte</translation>
    </message>
    <message>
        <source>No reminder from the model for this piece. It may be hot all the same: tongs and mat until it has been checked</source>
        <comment>between.hot.none</comment>
        <translation>Zu diesem Stück gibt das Modell keine Erinnerung. Es kann trotzdem heiß sein: Zange und Matte, bis es geprüft ist</translation>
    </message>
    <message>
        <source>How it was left</source>
        <comment>note.state</comment>
        <translation>Wie es hinterlassen wurde</translation>
    </message>
    <message>
        <source>Fault</source>
        <comment>note.fault</comment>
        <translation>Störung</translation>
    </message>
    <message>
        <source>To order</source>
        <comment>note.order</comment>
        <translation>Zu bestellen</translation>
    </message>
    <message>
        <source>Note</source>
        <comment>note.note</comment>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>One moment: what was shown is being put back.</source>
        <comment>return.wait</comment>
        <translation>Einen Moment: Was gezeigt wurde, wird zurückgeholt.</translation>
    </message>
    <message>
        <source>{file} could not be read and is left out.</source>
        <comment>autosave.broken</comment>
        <translation>{file} war nicht lesbar und wird ausgelassen.</translation>
    </message>
    <message>
        <source>The show goes on, but cannot save itself: {problem}</source>
        <comment>autosave.unsaved</comment>
        <translation>Die Vorführung geht weiter, kann sich aber nicht sichern: {problem}</translation>
    </message>
    <message>
        <source>Lehrlight is open already: this window does not save its show.</source>
        <comment>autosave.second</comment>
        <translation>Lehrlight ist schon offen: Dieses Fenster sichert seine Vorführung nicht.</translation>
    </message>
    <message>
        <source>Page Down</source>
        <comment>key.page_down</comment>
        <translation>Bild ab</translation>
    </message>
    <message>
        <source>Page Up</source>
        <comment>key.page_up</comment>
        <translation>Bild auf</translation>
    </message>
    <message>
        <source>Left arrow</source>
        <comment>key.left</comment>
        <translation>Pfeil links</translation>
    </message>
    <message>
        <source>Right arrow</source>
        <comment>key.right</comment>
        <translation>Pfeil rechts</translation>
    </message>
    <message>
        <source>Up arrow</source>
        <comment>key.up</comment>
        <translation>Pfeil auf</translation>
    </message>
    <message>
        <source>Down arrow</source>
        <comment>key.down</comment>
        <translation>Pfeil ab</translation>
    </message>
    <message>
        <source>Full stop (.)</source>
        <comment>key.stop</comment>
        <translation>Punkt (.)</translation>
    </message>
    <message>
        <source>Comma (,)</source>
        <comment>key.comma</comment>
        <translation>Komma (,)</translation>
    </message>
    <message>
        <source>Space</source>
        <comment>key.space</comment>
        <translation>Leertaste</translation>
    </message>
    <message>
        <source>{first} to {last}</source>
        <comment>key.range</comment>
        <translation>{first} bis {last}</translation>
    </message>
    <message>
        <source>Next</source>
        <comment>act.next</comment>
        <translation>Weiter</translation>
    </message>
    <message>
        <source>Back</source>
        <comment>act.back</comment>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Blank</source>
        <comment>act.blank</comment>
        <translation>Dunkel</translation>
    </message>
    <message>
        <source>Strip of actions</source>
        <comment>act.strip</comment>
        <translation>Leiste der Aktionen</translation>
    </message>
    <message>
        <source>Back to this step's state</source>
        <comment>act.return</comment>
        <translation>Zurück zum Zustand dieses Schritts</translation>
    </message>
    <message>
        <source>Freeze the picture</source>
        <comment>act.freeze</comment>
        <translation>Standbild</translation>
    </message>
    <message>
        <source>Catch-up line</source>
        <comment>act.catch_up</comment>
        <translation>Satz zum Aufholen</translation>
    </message>
    <message>
        <source>It went differently</source>
        <comment>act.contingency</comment>
        <translation>Es kam anders</translation>
    </message>
    <message>
        <source>Captions</source>
        <comment>act.captions</comment>
        <translation>Untertitel</translation>
    </message>
    <message>
        <source>Jump to a step</source>
        <comment>act.jump</comment>
        <translation>Zu einem Schritt springen</translation>
    </message>
    <message>
        <source>Emergency card</source>
        <comment>act.emergency</comment>
        <translation>Notfallkarte</translation>
    </message>
    <message>
        <source>A hand for answer {number}</source>
        <comment>act.count</comment>
        <translation>Eine Hand für Antwort {number}</translation>
    </message>
    <message>
        <source>A hand less for answer {number}</source>
        <comment>act.less</comment>
        <translation>Eine Hand weniger für Antwort {number}</translation>
    </message>
    <message>
        <source>Play or pause</source>
        <comment>act.play</comment>
        <translation>Abspielen oder Pause</translation>
    </message>
    <message>
        <source>One instant back</source>
        <comment>act.step_back</comment>
        <translation>Einen Augenblick zurück</translation>
    </message>
    <message>
        <source>One instant on</source>
        <comment>act.step_on</comment>
        <translation>Einen Augenblick weiter</translation>
    </message>
    <message>
        <source>Faster</source>
        <comment>act.faster</comment>
        <translation>Schneller</translation>
    </message>
    <message>
        <source>Slower</source>
        <comment>act.slower</comment>
        <translation>Langsamer</translation>
    </message>
    <message>
        <source>Restart the scene</source>
        <comment>act.reset</comment>
        <translation>Szene neu beginnen</translation>
    </message>
    <message>
        <source>Hold this picture</source>
        <comment>act.hold</comment>
        <translation>Dieses Bild festhalten</translation>
    </message>
    <message>
        <source>Slow replay of the break</source>
        <comment>act.replay</comment>
        <translation>Zeitlupe des Bruchs</translation>
    </message>
    <message>
        <source>First button of the scene</source>
        <comment>act.first_button</comment>
        <translation>Erster Knopf der Szene</translation>
    </message>
    <message>
        <source>Button {number} of the scene</source>
        <comment>act.button</comment>
        <translation>Knopf {number} der Szene</translation>
    </message>
    <message>
        <source>What the section shows</source>
        <comment>act.section</comment>
        <translation>Was der Schnitt zeigt</translation>
    </message>
    <message>
        <source>Brighten a faint picture</source>
        <comment>act.brighten</comment>
        <translation>Schwaches Bild aufhellen</translation>
    </message>
    <message>
        <source>Turn the polarizers back</source>
        <comment>act.turn_back</comment>
        <translation>Polarisatoren zurückdrehen</translation>
    </message>
    <message>
        <source>Turn the polarizers on</source>
        <comment>act.turn_on</comment>
        <translation>Polarisatoren weiterdrehen</translation>
    </message>
    <message>
        <source>Crossed or parallel</source>
        <comment>act.cross</comment>
        <translation>Gekreuzt oder parallel</translation>
    </message>
    <message>
        <source>Quarter-wave plates</source>
        <comment>act.quarter</comment>
        <translation>Viertelwellenplatten</translation>
    </message>
    <message>
        <source>Tint plate</source>
        <comment>act.tint</comment>
        <translation>Lambda-Platte</translation>
    </message>
    <message>
        <source>Favourite {number}</source>
        <comment>act.favourite</comment>
        <translation>Favorit {number}</translation>
    </message>
    <message>
        <source>Keep as favourite {number}</source>
        <comment>act.store</comment>
        <translation>Als Favorit {number} behalten</translation>
    </message>
    <message>
        <source>Save the picture</source>
        <comment>act.save</comment>
        <translation>Bild sichern</translation>
    </message>
    <message>
        <source>Show the keys</source>
        <comment>act.keys</comment>
        <translation>Tasten zeigen</translation>
    </message>
    <message>
        <source>Hide or show the controls</source>
        <comment>act.controls</comment>
        <translation>Bedienung aus- oder einblenden</translation>
    </message>
    <message>
        <source>Full screen</source>
        <comment>act.full_screen</comment>
        <translation>Vollbild</translation>
    </message>
    <message>
        <source>Actions</source>
        <comment>actions.title</comment>
        <translation>Aktionen</translation>
    </message>
    <message>
        <source>Close this strip</source>
        <comment>actions.close</comment>
        <translation>Diese Leiste schließen</translation>
    </message>
    <message>
        <source>Next and Back walk, Blank confirms ({next}, {back}, {blank}).</source>
        <comment>actions.walk</comment>
        <translation>Weiter und Zurück wandern, Dunkel bestätigt ({next}, {back}, {blank}).</translation>
    </message>
    <message>
        <source>Closes by itself {seconds} s after the last press.</source>
        <comment>actions.alone</comment>
        <translation>Schließt sich {seconds} s nach dem letzten Druck von selbst.</translation>
    </message>
    <message>
        <source>{label}, {place} of {count}</source>
        <comment>actions.here</comment>
        <translation>{label}, {place} von {count}</translation>
    </message>
    <message>
        <source>Keys</source>
        <comment>teach.title</comment>
        <translation>Tasten</translation>
    </message>
    <message>
        <source>Choose Teach, then press the button of the remote or the key.</source>
        <comment>teach.help</comment>
        <translation>Anlernen wählen, dann den Knopf der Fernbedienung oder die Taste drücken.</translation>
    </message>
    <message>
        <source>Presentation remote</source>
        <comment>teach.remote</comment>
        <translation>Präsentations-Fernbedienung</translation>
    </message>
    <message>
        <source>The show</source>
        <comment>teach.show</comment>
        <translation>Die Vorführung</translation>
    </message>
    <message>
        <source>While a question is open</source>
        <comment>teach.question</comment>
        <translation>Während eine Frage offen ist</translation>
    </message>
    <message>
        <source>The scene</source>
        <comment>teach.scene</comment>
        <translation>Die Szene</translation>
    </message>
    <message>
        <source>Light and view</source>
        <comment>teach.view</comment>
        <translation>Licht und Ansicht</translation>
    </message>
    <message>
        <source>Favourites</source>
        <comment>teach.favourites</comment>
        <translation>Favoriten</translation>
    </message>
    <message>
        <source>The window</source>
        <comment>teach.window</comment>
        <translation>Das Fenster</translation>
    </message>
    <message>
        <source>no key</source>
        <comment>teach.none</comment>
        <translation>keine Taste</translation>
    </message>
    <message>
        <source>Teach</source>
        <comment>teach.teach</comment>
        <translation>Anlernen</translation>
    </message>
    <message>
        <source>Teach one more key for: {label}</source>
        <comment>teach.teach.help</comment>
        <translation>Eine weitere Taste anlernen für: {label}</translation>
    </message>
    <message>
        <source>Take its keys from: {label}</source>
        <comment>teach.clear</comment>
        <translation>Tasten wegnehmen von: {label}</translation>
    </message>
    <message>
        <source>Press the button for “{label}” now.</source>
        <comment>teach.press</comment>
        <translation>Jetzt den Knopf für „{label}“ drücken.</translation>
    </message>
    <message>
        <source>Cancel</source>
        <comment>teach.cancel</comment>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>Nothing was changed.</source>
        <comment>teach.cancelled</comment>
        <translation>Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>{key} belongs to {others}. Take it for “{label}”?</source>
        <comment>teach.clash</comment>
        <translation>{key} gehört zu {others}. Für „{label}“ nehmen?</translation>
    </message>
    <message>
        <source>Take it</source>
        <comment>teach.take</comment>
        <translation>Nehmen</translation>
    </message>
    <message>
        <source>Leave it</source>
        <comment>teach.keep</comment>
        <translation>Lassen</translation>
    </message>
    <message>
        <source>{key} is now “{label}”.</source>
        <comment>teach.done</comment>
        <translation>{key} ist jetzt „{label}“.</translation>
    </message>
    <message>
        <source>{key} is now “{label}”, no longer {others}.</source>
        <comment>teach.moved</comment>
        <translation>{key} ist jetzt „{label}“, nicht mehr {others}.</translation>
    </message>
    <message>
        <source>“{label}” has no key now.</source>
        <comment>teach.cleared</comment>
        <translation>„{label}“ hat jetzt keine Taste.</translation>
    </message>
    <message>
        <source>All keys are as at first.</source>
        <comment>teach.defaults</comment>
        <translation>Alle Tasten sind wie am Anfang.</translation>
    </message>
    <message>
        <source>Letters, digits, signs as keys</source>
        <comment>teach.characters</comment>
        <translation>Buchstaben, Ziffern und Zeichen als Tasten</translation>
    </message>
    <message>
        <source>Off: a letter does nothing by itself, for people who speak to their computer or hit keys by chance. A sign that the remote sends still works.</source>
        <comment>teach.characters.help</comment>
        <translation>Aus: Ein Buchstabe allein tut nichts, für Menschen, die mit ihrem Rechner sprechen oder Tasten zufällig treffen. Ein Zeichen der Fernbedienung wirkt weiter.</translation>
    </message>
    <message>
        <source>The taught keys cannot be read, so all keys are as at first: {problem}</source>
        <comment>teach.broken</comment>
        <translation>Die angelernten Tasten sind nicht lesbar, darum sind alle wie am Anfang: {problem}</translation>
    </message>
    <message>
        <source>Projector card: set brightness until neighbouring steps can be told apart.</source>
        <comment>projector.title</comment>
        <translation>Projektorkarte: Helligkeit stellen, bis sich benachbarte Stufen unterscheiden lassen.</translation>
    </message>
    <message>
        <source>Grey steps of retardation, as the polarizers show them</source>
        <comment>projector.grey</comment>
        <translation>Graustufen des Gangunterschieds, wie die Polarisatoren sie zeigen</translation>
    </message>
    <message>
        <source>The same, brightened {gain} times</source>
        <comment>projector.gain</comment>
        <translation>Dieselben, {gain}-fach aufgehellt</translation>
    </message>
    <message>
        <source>black, white</source>
        <comment>projector.black_white</comment>
        <translation>schwarz, weiß</translation>
    </message>
    <message>
        <source>Focus: lines of 1, 2 and 3 pixels</source>
        <comment>projector.fine</comment>
        <translation>Schärfe: Linien von 1, 2 und 3 Pixeln</translation>
    </message>
    <message>
        <source>Fine print, {px} pixels high: if the first row can read this, the focus is sharp and the picture is not scaled.</source>
        <comment>projector.print</comment>
        <translation>Kleinschrift, {px} Pixel hoch: Kann die erste Reihe das lesen, ist das Bild scharf und nicht skaliert.</translation>
    </message>
    <message>
        <source>Frames at 0, 2.5 and 5 % from the edge: all three must be seen whole</source>
        <comment>projector.edges</comment>
        <translation>Rahmen bei 0, 2,5 und 5 % vom Rand: Alle drei müssen ganz zu sehen sein</translation>
    </message>
    <message>
        <source>{percent} %</source>
        <comment>projector.edge</comment>
        <translation>{percent} %</translation>
    </message>
    <message>
        <source>Letters for the back row, from there each line must be easy to read</source>
        <comment>projector.letters</comment>
        <translation>Buchstaben für die letzte Reihe; von dort muss jede Zeile gut lesbar sein</translation>
    </message>
    <message>
        <source>{arcmin}′, {px} px</source>
        <comment>projector.arcmin</comment>
        <translation>{arcmin}′, {px} px</translation>
    </message>
    <message>
        <source>No room here for {said} and more.</source>
        <comment>projector.too_big</comment>
        <translation>Kein Platz hier für {said} und mehr.</translation>
    </message>
    <message>
        <source>Picture {height} m high, back row at {depth} m</source>
        <comment>projector.hall</comment>
        <translation>Bild {height} m hoch, letzte Reihe in {depth} m</translation>
    </message>
    <message>
        <source>Picture's height or hall's depth not given: no letter sizes.</source>
        <comment>projector.unknown</comment>
        <translation>Bildhöhe oder Saaltiefe nicht angegeben: keine Buchstabengrößen.</translation>
    </message>
    <message>
        <source>Calm picture</source>
        <comment>calm</comment>
        <translation>Ruhiges Bild</translation>
    </message>
    <message>
        <source>Dims bright stripes and lets nothing come up suddenly, below published limits</source>
        <comment>calm.help</comment>
        <translation>Dämpft helle Streifen und lässt nichts plötzlich auftauchen, unter veröffentlichten Grenzen</translation>
    </message>
    <message>
        <source>Calm picture: changes are slowed</source>
        <comment>calm.on</comment>
        <translation>Ruhiges Bild: Wechsel sind verlangsamt</translation>
    </message>
    <message>
        <source>Calm picture: dimmed to {percent} % because of its stripes</source>
        <comment>calm.dimmed</comment>
        <translation>Ruhiges Bild: wegen seiner Streifen auf {percent} % gedimmt</translation>
    </message>
    <message>
        <source>Language of the windows</source>
        <comment>language</comment>
        <translation>Sprache der Fenster</translation>
    </message>
    <message>
        <source>As the system</source>
        <comment>language.system</comment>
        <translation>Wie das System</translation>
    </message>
    <message>
        <source>The windows speak another language from the next start on; what is shown stays as it is.</source>
        <comment>language.later</comment>
        <translation>Die Fenster sprechen eine andere Sprache ab dem nächsten Start; was gezeigt wird, bleibt, wie es ist.</translation>
    </message>
    <message>
        <source>Prep bench</source>
        <comment>bench</comment>
        <translation>Vorbereitung</translation>
    </message>
    <message>
        <source>Plan the glass, the oven and the flame before the doors open.</source>
        <comment>bench.help</comment>
        <translation>Glas, Ofen und Flamme planen, bevor sich die Türen öffnen.</translation>
    </message>
    <message>
        <source>Lehrlight: prep bench</source>
        <comment>bench.title</comment>
        <translation>Lehrlight: Vorbereitung</translation>
    </message>
    <message>
        <source>Questions</source>
        <comment>bench.questions</comment>
        <translation>Fragen</translation>
    </message>
    <message>
        <source>{number}  {title}</source>
        <comment>bench.item</comment>
        <translation>{number}  {title}</translation>
    </message>
    <message>
        <source>Ctrl+{number}</source>
        <comment>bench.item.help</comment>
        <translation>Strg+{number}</translation>
    </message>
    <message>
        <source>Time in the flame</source>
        <comment>bench.flame</comment>
        <translation>Zeit in der Flamme</translation>
    </message>
    <message>
        <source>Oven programme</source>
        <comment>bench.oven</comment>
        <translation>Ofenprogramm</translation>
    </message>
    <message>
        <source>Toughness of a sample</source>
        <comment>bench.toughness</comment>
        <translation>Vorspannung einer Probe</translation>
    </message>
    <message>
        <source>Bubble batch</source>
        <comment>bench.bubbles</comment>
        <translation>Charge von Kolben</translation>
    </message>
    <message>
        <source>Reading a colour</source>
        <comment>bench.colour</comment>
        <translation>Eine Farbe ablesen</translation>
    </message>
    <message>
        <source>Matching my own piece</source>
        <comment>bench.matching</comment>
        <translation>Mein eigenes Stück nachbilden</translation>
    </message>
    <message>
        <source>What-if map</source>
        <comment>bench.map</comment>
        <translation>Was-wäre-wenn-Karte</translation>
    </message>
    <message>
        <source>Ctrl+1 to 7 pages · Ctrl+L this list · Tab on · Ctrl+P print · Esc stop</source>
        <comment>bench.keys</comment>
        <translation>Strg+1 bis 7 Seiten · Strg+L diese Liste · Tab weiter · Strg+P drucken · Esc anhalten</translation>
    </message>
    <message>
        <source>What is put in</source>
        <comment>bench.inputs</comment>
        <translation>Was eingegeben wird</translation>
    </message>
    <message>
        <source>Answer; arrow keys scroll</source>
        <comment>bench.answer</comment>
        <translation>Antwort; Pfeiltasten blättern</translation>
    </message>
    <message>
        <source>Holds only so far</source>
        <comment>bench.limits</comment>
        <translation>Gilt nur so weit</translation>
    </message>
    <message>
        <source>Chart of {up} over {across}: {curves}</source>
        <comment>bench.chart</comment>
        <translation>Diagramm von {up} über {across}: {curves}</translation>
    </message>
    <message>
        <source>from {low} to {high}</source>
        <comment>bench.range</comment>
        <translation>von {low} bis {high}</translation>
    </message>
    <message>
        <source>hardly any spread</source>
        <comment>bench.no_range</comment>
        <translation>kaum Streuung</translation>
    </message>
    <message>
        <source>{low} to {high}</source>
        <comment>bench.span</comment>
        <translation>{low} bis {high}</translation>
    </message>
    <message>
        <source>hardly ever</source>
        <comment>bench.hardly</comment>
        <translation>fast nie</translation>
    </message>
    <message>
        <source>nearly always</source>
        <comment>bench.nearly</comment>
        <translation>fast immer</translation>
    </message>
    <message>
        <source>about {count} in 10</source>
        <comment>bench.in_ten</comment>
        <translation>etwa {count} von 10</translation>
    </message>
    <message>
        <source>about {count} in 20</source>
        <comment>bench.in_twenty</comment>
        <translation>etwa {count} von 20</translation>
    </message>
    <message>
        <source>The inputs have changed: what stands here answers the earlier ones.</source>
        <comment>bench.old</comment>
        <translation>Die Eingaben haben sich geändert: Was hier steht, antwortet auf die früheren.</translation>
    </message>
    <message>
        <source>No answer: one of the inputs cannot be; the line beside it says which.</source>
        <comment>bench.no_answer</comment>
        <translation>Keine Antwort: Eine Eingabe kann nicht sein; die Zeile daneben sagt, welche.</translation>
    </message>
    <message>
        <source>Working it out …</source>
        <comment>bench.working</comment>
        <translation>Wird berechnet …</translation>
    </message>
    <message>
        <source>Runs that make the ranges sharp</source>
        <comment>bench.progress</comment>
        <translation>Läufe, die die Bereiche schärfen</translation>
    </message>
    <message>
        <source>{done} of {most}</source>
        <comment>bench.done</comment>
        <translation>{done} von {most}</translation>
    </message>
    <message>
        <source>Stop</source>
        <comment>bench.stop</comment>
        <translation>Anhalten</translation>
    </message>
    <message>
        <source>Go on</source>
        <comment>bench.again</comment>
        <translation>Weiter</translation>
    </message>
    <message>
        <source>Stopped before there was an answer.</source>
        <comment>bench.stopped</comment>
        <translation>Angehalten, bevor es eine Antwort gab.</translation>
    </message>
    <message>
        <source>Stopped; what stands here is what was known by then. {state}</source>
        <comment>bench.stopped.at</comment>
        <translation>Angehalten; was hier steht, war bis dahin bekannt. {state}</translation>
    </message>
    <message>
        <source>Print …</source>
        <comment>bench.print</comment>
        <translation>Drucken …</translation>
    </message>
    <message>
        <source>This answer as a PDF, with inputs, limits and caution (Ctrl+P)</source>
        <comment>bench.print.help</comment>
        <translation>Diese Antwort als PDF, mit Eingaben, Grenzen und Vorsicht (Strg+P)</translation>
    </message>
    <message>
        <source>Could not print: {problem}</source>
        <comment>bench.unprinted</comment>
        <translation>Drucken ging nicht: {problem}</translation>
    </message>
    <message>
        <source>Something went wrong: {problem}</source>
        <comment>bench.fault</comment>
        <translation>Etwas ging schief: {problem}</translation>
    </message>
    <message>
        <source>the process that works it out has ended; ask again</source>
        <comment>bench.lost</comment>
        <translation>der Prozess, der es berechnet, ist zu Ende; noch einmal fragen</translation>
    </message>
    <message>
        <source>Pick the colour that you see without the tint plate</source>
        <comment>bench.pick.bare</comment>
        <translation>Die Farbe wählen, die Sie ohne die Lambda-Platte sehen</translation>
    </message>
    <message>
        <source>Pick the colour that you see with the tint plate in</source>
        <comment>bench.pick.plate</comment>
        <translation>Die Farbe wählen, die Sie mit der Lambda-Platte sehen</translation>
    </message>
    <message>
        <source>Left and Right: 5 nm; Page Up and Page Down: 50 nm; or the mouse</source>
        <comment>bench.picker.help</comment>
        <translation>Links und rechts: 5 nm; Bild auf und ab: 50 nm; oder die Maus</translation>
    </message>
    <message>
        <source>{nm} nm: plain {bare}; with the plate {adds} where it adds, {takes} where it takes away (patches from left to right)</source>
        <comment>bench.tint</comment>
        <translation>{nm} nm: ohne Platte {bare}; mit ihr {adds}, wo sie addiert, {takes}, wo sie abzieht (Felder von links nach rechts)</translation>
    </message>
    <message>
        <source>Keep as device</source>
        <comment>bench.keep</comment>
        <translation>Als Gerät behalten</translation>
    </message>
    <message>
        <source>Replace it</source>
        <comment>bench.keep.over</comment>
        <translation>Ersetzen</translation>
    </message>
    <message>
        <source>Name of your device, such as Jets of the big frame</source>
        <comment>bench.keep.name</comment>
        <translation>Name Ihres Geräts, etwa Düsen des großen Rahmens</translation>
    </message>
    <message>
        <source>Every scene and 'lehrlight solve --device' can use it then</source>
        <comment>bench.keep.help</comment>
        <translation>Jede Szene und 'lehrlight solve --device' kann es dann verwenden</translation>
    </message>
    <message>
        <source>'{name}' is there already: press again to put this value in its place.</source>
        <comment>bench.keep.there</comment>
        <translation>'{name}' gibt es schon: noch einmal drücken, um diesen Wert dafür einzusetzen.</translation>
    </message>
    <message>
        <source>'{name}' is kept; use it with --device {id}. File: {path}</source>
        <comment>bench.kept</comment>
        <translation>'{name}' ist behalten; verwenden mit --device {id}. Datei: {path}</translation>
    </message>
    <message>
        <source>How does a reading change over two settings, and where does the verdict change?</source>
        <comment>bench.map.help</comment>
        <translation>Wie ändert sich ein Messwert über zwei Einstellungen, und wo ändert sich das Urteil?</translation>
    </message>
    <message>
        <source>Across</source>
        <comment>bench.map.across</comment>
        <translation>Waagrecht</translation>
    </message>
    <message>
        <source>Up</source>
        <comment>bench.map.up</comment>
        <translation>Senkrecht</translation>
    </message>
    <message>
        <source>from</source>
        <comment>bench.map.from</comment>
        <translation>von</translation>
    </message>
    <message>
        <source>to</source>
        <comment>bench.map.to</comment>
        <translation>bis</translation>
    </message>
    <message>
        <source>points</source>
        <comment>bench.map.points</comment>
        <translation>Punkte</translation>
    </message>
    <message>
        <source>Reading in colours</source>
        <comment>bench.map.reading</comment>
        <translation>Messwert in Farben</translation>
    </message>
    <message>
        <source>Border of</source>
        <comment>bench.map.verdict</comment>
        <translation>Grenze von</translation>
    </message>
    <message>
        <source>No border</source>
        <comment>bench.map.no_verdict</comment>
        <translation>Keine Grenze</translation>
    </message>
    <message>
        <source>Make the map</source>
        <comment>bench.map.run</comment>
        <translation>Karte erstellen</translation>
    </message>
    <message>
        <source>The processes are starting …</source>
        <comment>bench.map.begins</comment>
        <translation>Die Prozesse starten …</translation>
    </message>
    <message>
        <source>{done} of {count} points are done and kept on the disk.</source>
        <comment>bench.map.running</comment>
        <translation>{done} von {count} Punkten sind fertig und liegen auf der Platte.</translation>
    </message>
    <message>
        <source>Stopping after the points in hand …</source>
        <comment>bench.map.stopping</comment>
        <translation>Hält nach den laufenden Punkten an …</translation>
    </message>
    <message>
        <source>All {count} points are done; {refused} of them cannot be.</source>
        <comment>bench.map.whole</comment>
        <translation>Alle {count} Punkte sind fertig; {refused} davon kann es nicht geben.</translation>
    </message>
    <message>
        <source>Stopped: {done} of {count} points are done. The same map goes on from here, also another day.</source>
        <comment>bench.map.part</comment>
        <translation>Angehalten: {done} von {count} Punkten sind fertig. Dieselbe Karte geht von hier weiter, auch an einem anderen Tag.</translation>
    </message>
    <message>
        <source>The verdict is the same all over, or no verdict: there is no border.</source>
        <comment>bench.map.no_border</comment>
        <translation>Das Urteil ist überall dasselbe oder fehlt: Es gibt keine Grenze.</translation>
    </message>
    <message>
        <source>Other choices stand on the left than those of the map shown.</source>
        <comment>bench.map.other</comment>
        <translation>Links ist anderes gewählt als bei der gezeigten Karte.</translation>
    </message>
    <message>
        <source>Colours: {reading}</source>
        <comment>bench.map.colours</comment>
        <translation>Farben: {reading}</translation>
    </message>
    <message>
        <source>cannot be</source>
        <comment>bench.map.refused</comment>
        <translation>kann nicht sein</translation>
    </message>
    <message>
        <source>not run yet</source>
        <comment>bench.map.not_yet</comment>
        <translation>noch nicht berechnet</translation>
    </message>
    <message>
        <source>Arrow keys choose a point; the line below tells its values.</source>
        <comment>bench.map.point</comment>
        <translation>Pfeiltasten wählen einen Punkt; die Zeile darunter nennt seine Werte.</translation>
    </message>
    <message>
        <source>Save table …</source>
        <comment>bench.csv</comment>
        <translation>Tabelle sichern …</translation>
    </message>
    <message>
        <source>All points with the settings as a CSV file (Ctrl+S)</source>
        <comment>bench.csv.help</comment>
        <translation>Alle Punkte mit den Einstellungen als CSV-Datei (Strg+S)</translation>
    </message>
    <message>
        <source>Outreach</source>
        <comment>outreach</comment>
        <translation>Schulbesuch</translation>
    </message>
    <message>
        <source>A whole lesson for a class: no flame, no breakage, predictions and tasks.</source>
        <comment>outreach.help</comment>
        <translation>Eine ganze Stunde für eine Klasse: keine Flamme, kein Bruch, Vorhersagen und Aufgaben.</translation>
    </message>
    <message>
        <source>Which lesson?</source>
        <comment>outreach.choose</comment>
        <translation>Welche Stunde?</translation>
    </message>
    <message>
        <source>{ages} · {minutes} min · {steps} steps</source>
        <comment>outreach.choose.note</comment>
        <translation>{ages} · {minutes} min · {steps} Schritte</translation>
    </message>
    <message>
        <source>Open another lesson …</source>
        <comment>outreach.choose.other</comment>
        <translation>Andere Stunde öffnen …</translation>
    </message>
    <message>
        <source>Begin the lesson ▶</source>
        <comment>outreach.begin</comment>
        <translation>Stunde beginnen ▶</translation>
    </message>
    <message>
        <source>Hand over to the group ▶</source>
        <comment>outreach.drive</comment>
        <translation>An die Gruppe übergeben ▶</translation>
    </message>
    <message>
        <source>Back to the lesson ▶</source>
        <comment>outreach.share</comment>
        <translation>Zurück zur Stunde ▶</translation>
    </message>
    <message>
        <source>◀ Back to the lesson</source>
        <comment>outreach.back</comment>
        <translation>◀ Zurück zur Stunde</translation>
    </message>
    <message>
        <source>“{label}” is not part of this lesson here.</source>
        <comment>outreach.refused</comment>
        <translation>„{label}“ gehört hier nicht zur Stunde.</translation>
    </message>
    <message>
        <source>Ages {low} to {high}</source>
        <comment>outreach.ages</comment>
        <translation>{low} bis {high} Jahre</translation>
    </message>
    <message>
        <source>For adults</source>
        <comment>outreach.adults</comment>
        <translation>Für Erwachsene</translation>
    </message>
    <message>
        <source>First write your own letter on paper. Nobody speaks yet.</source>
        <comment>outreach.paper</comment>
        <translation>Schreibt zuerst euren Buchstaben auf Papier. Noch spricht niemand.</translation>
    </message>
    <message>
        <source>Hands up for the letter that you wrote.</source>
        <comment>outreach.count</comment>
        <translation>Hände hoch für den Buchstaben, den ihr geschrieben habt.</translation>
    </message>
    <message>
        <source>Nobody is told yet. Let us look.</source>
        <comment>outreach.bars</comment>
        <translation>Noch wird nichts verraten. Schauen wir hin.</translation>
    </message>
    <message>
        <source>Now vote once more</source>
        <comment>outreach.again</comment>
        <translation>Jetzt noch einmal abstimmen</translation>
    </message>
    <message>
        <source>Write a second letter beside the first, in silence.</source>
        <comment>outreach.again.paper</comment>
        <translation>Schreibt still einen zweiten Buchstaben neben den ersten.</translation>
    </message>
    <message>
        <source>Read the letter that you wrote first. Would you write it again?</source>
        <comment>outreach.again.line</comment>
        <translation>Lest den Buchstaben, den ihr zuerst geschrieben habt. Würdet ihr ihn wieder schreiben?</translation>
    </message>
    <message>
        <source>Write your answer on the slip before you go.</source>
        <comment>outreach.exit</comment>
        <translation>Schreibt eure Antwort auf den Zettel, bevor ihr geht.</translation>
    </message>
    <message>
        <source>You may change: {labels}</source>
        <comment>outreach.may</comment>
        <translation>Ihr dürft ändern: {labels}</translation>
    </message>
    <message>
        <source>You may change</source>
        <comment>outreach.may.title</comment>
        <translation>Ihr dürft ändern</translation>
    </message>
    <message>
        <source>First agree on what you would try, and write it down.</source>
        <comment>outreach.first</comment>
        <translation>Einigt euch zuerst, was ihr versuchen wollt, und schreibt es auf.</translation>
    </message>
    <message>
        <source>Tell the others: what did you change, and what happened?</source>
        <comment>outreach.tell</comment>
        <translation>Erzählt den anderen: Was habt ihr geändert, und was geschah?</translation>
    </message>
    <message>
        <source>Tell the others: what did you change, and why?</source>
        <comment>outreach.why</comment>
        <translation>Erzählt den anderen: Was habt ihr geändert, und warum?</translation>
    </message>
    <message>
        <source>Try it</source>
        <comment>outreach.try</comment>
        <translation>Versuchen</translation>
    </message>
    <message>
        <source>Show the result</source>
        <comment>outreach.look</comment>
        <translation>Ergebnis zeigen</translation>
    </message>
    <message>
        <source>The model works it out …</source>
        <comment>outreach.working</comment>
        <translation>Das Modell rechnet …</translation>
    </message>
    <message>
        <source>Next group</source>
        <comment>outreach.fresh</comment>
        <translation>Nächste Gruppe</translation>
    </message>
    <message>
        <source>Hint</source>
        <comment>outreach.hint</comment>
        <translation>Tipp</translation>
    </message>
    <message>
        <source>Tries: {count}</source>
        <comment>outreach.tries</comment>
        <translation>Versuche: {count}</translation>
    </message>
    <message>
        <source>No try yet</source>
        <comment>outreach.ready</comment>
        <translation>Noch kein Versuch</translation>
    </message>
    <message>
        <source>✓ Reached at try {count}</source>
        <comment>outreach.reached</comment>
        <translation>✓ Erreicht beim Versuch {count}</translation>
    </message>
    <message>
        <source>✗ Not reached yet</source>
        <comment>outreach.not_yet</comment>
        <translation>✗ Noch nicht erreicht</translation>
    </message>
    <message>
        <source>✓ {label}: {value}</source>
        <comment>outreach.goal.met</comment>
        <translation>✓ {label}: {value}</translation>
    </message>
    <message>
        <source>✗ {label}: {value}</source>
        <comment>outreach.goal.missed</comment>
        <translation>✗ {label}: {value}</translation>
    </message>
    <message>
        <source>Best so far: {label} {value}</source>
        <comment>outreach.best</comment>
        <translation>Bisher am besten: {label} {value}</translation>
    </message>
    <message>
        <source>Groups that reached it: {count} of {groups}</source>
        <comment>outreach.by</comment>
        <translation>Gruppen, die es erreicht haben: {count} von {groups}</translation>
    </message>
    <message>
        <source>Largest retardation in the middle</source>
        <comment>outreach.peak</comment>
        <translation>Größter Gangunterschied in der Mitte</translation>
    </message>
    <message>
        <source>{ask}  ·  {tries}</source>
        <comment>outreach.goal.line</comment>
        <translation>{ask}  ·  {tries}</translation>
    </message>
    <message>
        <source>The model cannot work that out: {problem}</source>
        <comment>outreach.failed</comment>
        <translation>Das kann das Modell nicht berechnen: {problem}</translation>
    </message>
    <message>
        <source>Tries end with the task: begin the next one with Try it.</source>
        <comment>outreach.interrupted</comment>
        <translation>Versuche enden mit der Aufgabe: Den nächsten mit Versuchen beginnen.</translation>
    </message>
    <message>
        <source>Votes</source>
        <comment>page.votes</comment>
        <translation>Stimmen</translation>
    </message>
    <message>
        <source>Paper</source>
        <comment>page.handout</comment>
        <translation>Papier</translation>
    </message>
    <message>
        <source>Lesson</source>
        <comment>page.lesson</comment>
        <translation>Stunde</translation>
    </message>
    <message>
        <source>Votes before and after</source>
        <comment>votes.title</comment>
        <translation>Stimmen vorher und nachher</translation>
    </message>
    <message>
        <source>No hands have been counted yet.</source>
        <comment>votes.none</comment>
        <translation>Noch wurden keine Hände gezählt.</translation>
    </message>
    <message>
        <source>before</source>
        <comment>votes.before</comment>
        <translation>vorher</translation>
    </message>
    <message>
        <source>after</source>
        <comment>votes.after</comment>
        <translation>nachher</translation>
    </message>
    <message>
        <source>not counted yet</source>
        <comment>votes.after.none</comment>
        <translation>noch nicht gezählt</translation>
    </message>
    <message>
        <source>✓ {answer}</source>
        <comment>votes.right</comment>
        <translation>✓ {answer}</translation>
    </message>
    <message>
        <source>{count} ({percent} %)</source>
        <comment>votes.count</comment>
        <translation>{count} ({percent} %)</translation>
    </message>
    <message>
        <source>Hands alone are counted: no names, and nobody can be told from these numbers.</source>
        <comment>votes.note</comment>
        <translation>Nur Hände werden gezählt: keine Namen, und niemand ist an diesen Zahlen zu erkennen.</translation>
    </message>
    <message>
        <source>Gained {percent} % of what could be gained</source>
        <comment>votes.gain</comment>
        <translation>{percent} % des möglichen Zuwachses erreicht</translation>
    </message>
    <message>
        <source>Save as a table …</source>
        <comment>votes.save</comment>
        <translation>Als Tabelle sichern …</translation>
    </message>
    <message>
        <source>Kept in {path}</source>
        <comment>votes.kept</comment>
        <translation>Gesichert in {path}</translation>
    </message>
    <message>
        <source>The votes are not on the disk: save them as a table before you close.</source>
        <comment>votes.unkept</comment>
        <translation>Die Stimmen sind nicht auf der Platte: vor dem Schließen als Tabelle sichern.</translation>
    </message>
    <message>
        <source>The votes are not on the disk. Close again within {seconds} s to leave them.</source>
        <comment>votes.close</comment>
        <translation>Die Stimmen sind nicht auf der Platte. Erneutes Schließen binnen {seconds} s verwirft sie.</translation>
    </message>
    <message>
        <source>Paper for the class</source>
        <comment>handout.title</comment>
        <translation>Papier für die Klasse</translation>
    </message>
    <message>
        <source>A worksheet and its answer key come from the same number: the class gets the one, you keep the other. Print in black and white.</source>
        <comment>handout.help</comment>
        <translation>Arbeitsblatt und Lösung entstehen aus derselben Nummer: Die Klasse bekommt das eine, Sie behalten das andere. In Schwarzweiß drucken.</translation>
    </message>
    <message>
        <source>Number of the worksheet</source>
        <comment>handout.seed</comment>
        <translation>Nummer des Arbeitsblatts</translation>
    </message>
    <message>
        <source>Another number</source>
        <comment>handout.other</comment>
        <translation>Andere Nummer</translation>
    </message>
    <message>
        <source>Paper size</source>
        <comment>handout.paper</comment>
        <translation>Papiergröße</translation>
    </message>
    <message>
        <source>Save worksheet and key …</source>
        <comment>handout.save</comment>
        <translation>Arbeitsblatt und Lösung sichern …</translation>
    </message>
    <message>
        <source>The model computes every number of the worksheet …</source>
        <comment>handout.busy</comment>
        <translation>Das Modell berechnet jede Zahl des Arbeitsblatts …</translation>
    </message>
    <message>
        <source>Saved: {paths}</source>
        <comment>handout.saved</comment>
        <translation>Gesichert: {paths}</translation>
    </message>
    <message>
        <source>Kit</source>
        <comment>handout.kit</comment>
        <translation>Material</translation>
    </message>
    <message>
        <source>What pupils commonly believe, and how to meet it</source>
        <comment>handout.beliefs</comment>
        <translation>Was Kinder oft glauben, und wie man darauf eingeht</translation>
    </message>
    <message>
        <source>allergens</source>
        <comment>hazard.allergens</comment>
        <translation>Allergene</translation>
    </message>
    <message>
        <source>small parts</source>
        <comment>hazard.small-parts</comment>
        <translation>kleine Teile</translation>
    </message>
    <message>
        <source>warm lamp</source>
        <comment>hazard.warm-lamp</comment>
        <translation>warme Lampe</translation>
    </message>
</context>
<context>
    <name>short</name>
    <message>
        <source>Bubble</source>
        <comment>bubble</comment>
        <translation>Glaskolben</translation>
    </message>
    <message>
        <source>Cooling</source>
        <comment>cooling</comment>
        <translation>Abkühlen</translation>
    </message>
    <message>
        <source>Dish</source>
        <comment>dish</comment>
        <translation>Schale</translation>
    </message>
    <message>
        <source>Light table</source>
        <comment>light-table</comment>
        <translation>Leuchttisch</translation>
    </message>
    <message>
        <source>Pour</source>
        <comment>pour</comment>
        <translation>Becher</translation>
    </message>
    <message>
        <source>Push pull</source>
        <comment>push-pull</comment>
        <translation>Druck und Zug</translation>
    </message>
    <message>
        <source>Ring</source>
        <comment>ring</comment>
        <translation>Flasche</translation>
    </message>
    <message>
        <source>Touch</source>
        <comment>touch</comment>
        <translation>Berührung</translation>
    </message>
    <message>
        <source>Toughen</source>
        <comment>toughen</comment>
        <translation>Vorspannen</translation>
    </message>
</context>
<context>
    <name>view</name>
    <message>
        <source>Daylight</source>
        <comment>choice.lamp.daylight</comment>
        <translation>Tageslicht</translation>
    </message>
    <message>
        <source>Incandescent</source>
        <comment>choice.lamp.incandescent</comment>
        <translation>Glühlampe</translation>
    </message>
    <message>
        <source>White led</source>
        <comment>choice.lamp.white-led</comment>
        <translation>Weiße LED</translation>
    </message>
    <message>
        <source>Sodium</source>
        <comment>choice.lamp.sodium</comment>
        <translation>Natrium</translation>
    </message>
    <message>
        <source>Green</source>
        <comment>choice.lamp.green</comment>
        <translation>Grün</translation>
    </message>
    <message>
        <source>Temperature</source>
        <comment>choice.section.temperature</comment>
        <translation>Temperatur</translation>
    </message>
    <message>
        <source>Stress</source>
        <comment>choice.section.stress</comment>
        <translation>Spannung</translation>
    </message>
</context>
<context>
    <name>venue</name>
    <message>
        <source>Audience's distance</source>
        <comment>audience_distance_m</comment>
        <translation>Abstand des Publikums</translation>
    </message>
    <message>
        <source>From flame and breakage to the nearest seat, m, as your assessment says.</source>
        <comment>audience_distance_m.ask</comment>
        <translation>Von Flamme und Bruch bis zum nächsten Platz, m, wie in Ihrer Beurteilung.</translation>
    </message>
    <message>
        <source>Eyewear, presenter</source>
        <comment>eyewear_presenter</comment>
        <translation>Augenschutz, Vorführende</translation>
    </message>
    <message>
        <source>What the presenter wears, and when.</source>
        <comment>eyewear_presenter.ask</comment>
        <translation>Was die vorführende Person trägt und wann.</translation>
    </message>
    <message>
        <source>Eyewear, helpers</source>
        <comment>eyewear_helpers</comment>
        <translation>Augenschutz, Helfende</translation>
    </message>
    <message>
        <source>What a helper wears who comes up, and when.</source>
        <comment>eyewear_helpers.ask</comment>
        <translation>Was Helfende tragen, die nach vorn kommen, und wann.</translation>
    </message>
    <message>
        <source>Eyewear, audience</source>
        <comment>eyewear_audience</comment>
        <translation>Augenschutz, Publikum</translation>
    </message>
    <message>
        <source>What the audience wears, or why nothing.</source>
        <comment>eyewear_audience.ask</comment>
        <translation>Was das Publikum trägt, oder warum nichts.</translation>
    </message>
    <message>
        <source>Approves the show</source>
        <comment>approver</comment>
        <translation>Genehmigt die Vorführung</translation>
    </message>
    <message>
        <source>The role that approves flame and breakage; no name.</source>
        <comment>approver.ask</comment>
        <translation>Die Funktion, die Flamme und Bruch genehmigt; kein Name.</translation>
    </message>
    <message>
        <source>Extinguisher</source>
        <comment>extinguisher_place</comment>
        <translation>Feuerlöscher</translation>
    </message>
    <message>
        <source>Where it hangs, and of which kind.</source>
        <comment>extinguisher_place.ask</comment>
        <translation>Wo er hängt und welche Art.</translation>
    </message>
    <message>
        <source>Burner's shut-off</source>
        <comment>burner_shut_off_place</comment>
        <translation>Absperrung des Brenners</translation>
    </message>
    <message>
        <source>Where the fuel is shut off.</source>
        <comment>burner_shut_off_place.ask</comment>
        <translation>Wo der Brennstoff abgesperrt wird.</translation>
    </message>
    <message>
        <source>Exits</source>
        <comment>exits</comment>
        <translation>Ausgänge</translation>
    </message>
    <message>
        <source>Each way out, as it is announced.</source>
        <comment>exits.ask</comment>
        <translation>Jeder Weg hinaus, wie er angesagt wird.</translation>
    </message>
    <message>
        <source>Assembly point</source>
        <comment>assembly_point</comment>
        <translation>Sammelplatz</translation>
    </message>
    <message>
        <source>Where everybody meets outside.</source>
        <comment>assembly_point.ask</comment>
        <translation>Wo sich draußen alle treffen.</translation>
    </message>
    <message>
        <source>Emergency number</source>
        <comment>emergency_number</comment>
        <translation>Notrufnummer</translation>
    </message>
    <message>
        <source>What to dial from this room.</source>
        <comment>emergency_number.ask</comment>
        <translation>Was aus diesem Raum zu wählen ist.</translation>
    </message>
    <message>
        <source>First aid</source>
        <comment>first_aid</comment>
        <translation>Erste Hilfe</translation>
    </message>
    <message>
        <source>Where the box is, and the role that helps.</source>
        <comment>first_aid.ask</comment>
        <translation>Wo der Kasten ist und welche Funktion hilft.</translation>
    </message>
    <message>
        <source>Sound and flash warning</source>
        <comment>warning</comment>
        <translation>Warnung vor Knall und Blitz</translation>
    </message>
    <message>
        <source>What is said of bangs, light and flashes before.</source>
        <comment>warning.ask</comment>
        <translation>Was vorher über Knall, Licht und Blitze gesagt wird.</translation>
    </message>
    <message>
        <source>Hall's depth</source>
        <comment>hall_depth_m</comment>
        <translation>Tiefe des Saals</translation>
    </message>
    <message>
        <source>Screen to the last row, m.</source>
        <comment>hall_depth_m.ask</comment>
        <translation>Leinwand bis letzte Reihe, m.</translation>
    </message>
    <message>
        <source>Picture's height</source>
        <comment>picture_height_m</comment>
        <translation>Höhe des Bildes</translation>
    </message>
    <message>
        <source>Of the projected picture, m.</source>
        <comment>picture_height_m.ask</comment>
        <translation>Des projizierten Bildes, m.</translation>
    </message>
    <message>
        <source>Picture's width</source>
        <comment>picture_width_m</comment>
        <translation>Breite des Bildes</translation>
    </message>
    <message>
        <source>Of the projected picture, m.</source>
        <comment>picture_width_m.ask</comment>
        <translation>Des projizierten Bildes, m.</translation>
    </message>
</context>
<context>
    <name>review</name>
    <message>
        <source>Missing: ask who approves the show</source>
        <comment>missing</comment>
        <translation>Fehlt: fragen Sie, wer die Vorführung genehmigt</translation>
    </message>
    <message>
        <source>Reviewed by {role} on {day}</source>
        <comment>reviewed</comment>
        <translation>Geprüft von {role} am {day}</translation>
    </message>
    <message>
        <source>Review out of date: by {role} on {day}</source>
        <comment>late</comment>
        <translation>Prüfung abgelaufen: von {role} am {day}</translation>
    </message>
    <message>
        <source>Not reviewed: the review by {role} on {day} lies ahead</source>
        <comment>ahead</comment>
        <translation>Nicht geprüft: die Prüfung von {role} am {day} liegt in der Zukunft</translation>
    </message>
    <message>
        <source>Not reviewed: how long the review by {role} on {day} holds is not said</source>
        <comment>days</comment>
        <translation>Nicht geprüft: wie lange die Prüfung von {role} vom {day} gilt, ist nicht gesagt</translation>
    </message>
    <message>
        <source>Not reviewed yet</source>
        <comment>never</comment>
        <translation>Noch nicht geprüft</translation>
    </message>
</context>
<context>
    <name>checklist</name>
    <message>
        <source>Follow your venue's approved assessment; if this differs, theirs wins.</source>
        <comment>follow</comment>
        <translation>Es gilt die genehmigte Beurteilung Ihres Hauses; weicht diese ab, hat sie Vorrang.</translation>
    </message>
    <message>
        <source>presenter: eyewear for {hazard}</source>
        <comment>presenter</comment>
        <translation>Vorführende: Augenschutz bei {hazard}</translation>
    </message>
    <message>
        <source>helper: {eyewear}</source>
        <comment>helper</comment>
        <translation>Helfende: {eyewear}</translation>
    </message>
    <message>
        <source>Flame out, fuel shut off.</source>
        <comment>flame</comment>
        <translation>Flamme aus, Brennstoff abgesperrt.</translation>
    </message>
    <message>
        <source>Hot pieces stay on the mat, marked hot, until they have been checked cold.</source>
        <comment>hot</comment>
        <translation>Heiße Stücke bleiben auf der Matte, als heiß gekennzeichnet, bis sie geprüft kalt sind.</translation>
    </message>
    <message>
        <source>Hot water emptied, floor dry.</source>
        <comment>water</comment>
        <translation>Heißes Wasser ausgegossen, Boden trocken.</translation>
    </message>
    <message>
        <source>Shards brushed up into the labelled container; table and floor looked over.</source>
        <comment>shards</comment>
        <translation>Scherben in den beschrifteten Behälter gekehrt; Tisch und Boden abgesucht.</translation>
    </message>
    <message>
        <source>Pieces counted in; what broke is written down; new ones counted out.</source>
        <comment>pieces</comment>
        <translation>Stücke zurückgezählt; Bruch aufgeschrieben; neue ausgezählt.</translation>
    </message>
    <message>
        <source>Props back in their places.</source>
        <comment>props</comment>
        <translation>Requisiten wieder an ihrem Platz.</translation>
    </message>
    <message>
        <source>Eyewear wiped and back on its hooks.</source>
        <comment>eyewear</comment>
        <translation>Augenschutz abgewischt und wieder am Haken.</translation>
    </message>
    <message>
        <source>Counts of hands cleared.</source>
        <comment>hands</comment>
        <translation>Handzählungen gelöscht.</translation>
    </message>
    <message>
        <source>The sheet is back at its first step.</source>
        <comment>first</comment>
        <translation>Der Ablauf steht wieder auf dem ersten Schritt.</translation>
    </message>
    <message>
        <source>Attendance, near misses and odd questions are written down.</source>
        <comment>journal</comment>
        <translation>Besucherzahl, Beinahe-Unfälle und ungewöhnliche Fragen sind aufgeschrieben.</translation>
    </message>
    <message>
        <source>flame</source>
        <comment>hazard.flame</comment>
        <translation>Flamme</translation>
    </message>
    <message>
        <source>hot-glass</source>
        <comment>hazard.hot-glass</comment>
        <translation>heißem Glas</translation>
    </message>
    <message>
        <source>breakage</source>
        <comment>hazard.breakage</comment>
        <translation>Bruch</translation>
    </message>
    <message>
        <source>hot-water</source>
        <comment>hazard.hot-water</comment>
        <translation>heißem Wasser</translation>
    </message>
    <message>
        <source>stored-energy</source>
        <comment>hazard.stored-energy</comment>
        <translation>gespeicherter Energie</translation>
    </message>
</context>
<context>
    <name>hot</name>
    <message>
        <source>Tongs and the insulated mat; hot glass looks cold.</source>
        <comment>handle</comment>
        <translation>Zange und isolierte Matte; heißes Glas sieht kalt aus.</translation>
    </message>
    <message>
        <source>{name}: hot. {handle}</source>
        <comment>always</comment>
        <translation>{name}: heiß. {handle}</translation>
    </message>
    <message>
        <source>{name}: hot until at least {until}. {handle}</source>
        <comment>hot</comment>
        <translation>{name}: heiß mindestens bis {until}. {handle}</translation>
    </message>
    <message>
        <source>{name}: was hot until at least {until} and may be still. {handle}</source>
        <comment>was</comment>
        <translation>{name}: war heiß mindestens bis {until} und ist es vielleicht noch. {handle}</translation>
    </message>
</context>
<context>
    <name>pieces</name>
    <message>
        <source>{batch}: {out} out, {back} back, {broken} broken: the count balances</source>
        <comment>even</comment>
        <translation>{batch}: {out} hinaus, {back} zurück, {broken} zerbrochen: Die Zählung geht auf</translation>
    </message>
    <message>
        <source>{batch}: {out} out, {back} back, {broken} broken: {apart} not found yet, look for them before anybody comes in</source>
        <comment>short</comment>
        <translation>{batch}: {out} hinaus, {back} zurück, {broken} zerbrochen: {apart} noch nicht gefunden, suchen, bevor jemand hereinkommt</translation>
    </message>
    <message>
        <source>{batch}: {out} out, {back} back, {broken} broken: {apart} more than went out, count again</source>
        <comment>over</comment>
        <translation>{batch}: {out} hinaus, {back} zurück, {broken} zerbrochen: {apart} mehr als hinausgingen, neu zählen</translation>
    </message>
</context>
<context>
    <name>bench</name>
    <message>
        <source>This prepares a demonstration. It never clears a piece of glass for use, and no number here says that a real piece is safe.</source>
        <comment>caution_show</comment>
        <translation>Dies bereitet eine Vorführung vor. Es gibt nie ein Stück Glas zur Verwendung frei, und keine Zahl hier besagt, dass ein wirkliches Stück sicher ist.</translation>
    </message>
    <message>
        <source>It does not replace your venue's assessment: where the two differ, theirs wins.</source>
        <comment>caution_venue</comment>
        <translation>Es ersetzt nicht die Beurteilung Ihres Hauses: Wo beide abweichen, gilt diese.</translation>
    </message>
    <message>
        <source>A range holds nine of ten cases within the tolerances that are stated; what nobody stated is not in it.</source>
        <comment>limit_range</comment>
        <translation>Ein Bereich enthält neun von zehn Fällen innerhalb der angegebenen Toleranzen; was niemand angegeben hat, ist nicht darin.</translation>
    </message>
    <message>
        <source>The glass is taken as the file '{glass}' has it; another maker's may differ by some percent in every value.</source>
        <comment>limit_glass</comment>
        <translation>Das Glas ist so angenommen, wie es in der Datei „{glass}“ steht; das eines anderen Herstellers kann in jedem Wert um einige Prozent abweichen.</translation>
    </message>
    <message>
        <source>This is a first estimate; the runs that make the ranges sharp are still to come.</source>
        <comment>first</comment>
        <translation>Dies ist eine erste Schätzung; die Läufe, die die Bereiche scharf machen, folgen noch.</translation>
    </message>
    <message>
        <source>share</source>
        <comment>share</comment>
        <translation>Anteil</translation>
    </message>
    <message>
        <source>probability</source>
        <comment>probability</comment>
        <translation>Wahrscheinlichkeit</translation>
    </message>
    <message>
        <source>Worked out, with no chances drawn.</source>
        <comment>drawn_none</comment>
        <translation>Berechnet, ohne Zufallsziehung.</translation>
    </message>
    <message>
        <source>{runs} of {most} runs, seed {seed}.</source>
        <comment>drawn</comment>
        <translation>{runs} von {most} Läufen, Startzahl {seed}.</translation>
    </message>
    <message>
        <source>none</source>
        <comment>nothing</comment>
        <translation>keine</translation>
    </message>
    <message>
        <source>under {percent}</source>
        <comment>under</comment>
        <translation>unter {percent}</translation>
    </message>
    <message>
        <source>over {percent}</source>
        <comment>over</comment>
        <translation>über {percent}</translation>
    </message>
    <message>
        <source>What makes it spread</source>
        <comment>matters</comment>
        <translation>Woher die Streuung kommt</translation>
    </message>
    <message>
        <source>tolerance</source>
        <comment>of</comment>
        <translation>Toleranz</translation>
    </message>
    <message>
        <source>wall</source>
        <comment>by_wall</comment>
        <translation>Wand</translation>
    </message>
    <message>
        <source>flame</source>
        <comment>by_flame</comment>
        <translation>Flamme</translation>
    </message>
    <message>
        <source>where the drop lands</source>
        <comment>by_aim</comment>
        <translation>wo der Tropfen auftrifft</translation>
    </message>
    <message>
        <source>thickness</source>
        <comment>by_thick</comment>
        <translation>Dicke</translation>
    </message>
    <message>
        <source>the oven's thermometer</source>
        <comment>by_error</comment>
        <translation>Thermometer des Ofens</translation>
    </message>
    <message>
        <source>air and draught</source>
        <comment>by_air</comment>
        <translation>Luft und Zugluft</translation>
    </message>
    <message>
        <source>start of the jets</source>
        <comment>by_start</comment>
        <translation>Start der Düsen</translation>
    </message>
    <message>
        <source>jets</source>
        <comment>by_jets</comment>
        <translation>Düsen</translation>
    </message>
    <message>
        <source>reading</source>
        <comment>by_reading</comment>
        <translation>Messwert</translation>
    </message>
    <message>
        <source>from the middle to the surface</source>
        <comment>by_ratio</comment>
        <translation>von der Mitte zur Oberfläche</translation>
    </message>
    <message>
        <source>foot</source>
        <comment>by_base</comment>
        <translation>Boden</translation>
    </message>
    <message>
        <source>together, or not in proportion</source>
        <comment>by_rest</comment>
        <translation>zusammen oder nicht proportional</translation>
    </message>
    <message>
        <source>What makes most of the spread is the wall: measure it.</source>
        <comment>most_wall</comment>
        <translation>Der größte Teil der Streuung kommt von der Wand: messen Sie sie.</translation>
    </message>
    <message>
        <source>What makes most of the spread is the flame: set it by a gauge, not by eye.</source>
        <comment>most_flame</comment>
        <translation>Der größte Teil der Streuung kommt von der Flamme: nach Messgerät einstellen, nicht nach Augenmaß.</translation>
    </message>
    <message>
        <source>What makes most of the spread is where the drop lands: use a guide.</source>
        <comment>most_aim</comment>
        <translation>Die Streuung kommt vor allem daher, wo der Tropfen auftrifft: mit Führung arbeiten.</translation>
    </message>
    <message>
        <source>What makes most of the spread is the thickness: measure it.</source>
        <comment>most_thick</comment>
        <translation>Der größte Teil der Streuung kommt von der Dicke: messen Sie sie.</translation>
    </message>
    <message>
        <source>What makes most of the spread is the oven's thermometer: have it checked.</source>
        <comment>most_error</comment>
        <translation>Der größte Teil der Streuung kommt vom Thermometer des Ofens: lassen Sie es prüfen.</translation>
    </message>
    <message>
        <source>What makes most of the spread is air and draught: keep them alike.</source>
        <comment>most_air</comment>
        <translation>Der größte Teil der Streuung kommt von Luft und Zugluft: halten Sie beide gleich.</translation>
    </message>
    <message>
        <source>What makes most of the spread is the heat at the start of the jets.</source>
        <comment>most_start</comment>
        <translation>Der größte Teil der Streuung kommt von der Temperatur beim Start der Düsen.</translation>
    </message>
    <message>
        <source>What makes most of the spread is the jets: match them to a real plate first.</source>
        <comment>most_jets</comment>
        <translation>Der größte Teil der Streuung kommt von den Düsen: gleichen Sie sie erst an einer echten Platte ab.</translation>
    </message>
    <message>
        <source>What makes most of the spread is the reading: read it again.</source>
        <comment>most_reading</comment>
        <translation>Der größte Teil der Streuung kommt vom Messwert: messen Sie noch einmal.</translation>
    </message>
    <message>
        <source>What makes most of the spread is the step from the middle to the surface: read the skin as well.</source>
        <comment>most_ratio</comment>
        <translation>Der größte Teil der Streuung kommt vom Schluss von der Mitte auf die Oberfläche: messen Sie auch die Oberfläche.</translation>
    </message>
    <message>
        <source>What makes most of the spread is the foot: sort the flasks by it.</source>
        <comment>most_base</comment>
        <translation>Der größte Teil der Streuung kommt vom Boden: sortieren Sie die Kolben danach.</translation>
    </message>
    <message>
        <source>A map is one run a point, with no spread; a border is no finer than its points.</source>
        <comment>limit_map</comment>
        <translation>Eine Karte ist ein Lauf je Punkt, ohne Streuung; eine Grenze ist nicht feiner als ihre Punkte.</translation>
    </message>
</context>
<context>
    <name>bench.flame</name>
    <message>
        <source>How long must my bottle stay in the flame, so that it cracks when the drop lands?</source>
        <comment>help</comment>
        <translation>Wie lange muss meine Flasche in der Flamme bleiben, damit sie reißt, wenn der Tropfen auftrifft?</translation>
    </message>
    <message>
        <source>Glass</source>
        <comment>setting.glass</comment>
        <translation>Glas</translation>
    </message>
    <message>
        <source>What the bottle is made of.</source>
        <comment>setting.glass.help</comment>
        <translation>Woraus die Flasche besteht.</translation>
    </message>
    <message>
        <source>Borosilicate</source>
        <comment>choice.glass.borosilicate</comment>
        <translation>Borosilikat</translation>
    </message>
    <message>
        <source>Fused silica</source>
        <comment>choice.glass.fused-silica</comment>
        <translation>Kieselglas</translation>
    </message>
    <message>
        <source>Lead crystal</source>
        <comment>choice.glass.lead-crystal</comment>
        <translation>Bleikristall</translation>
    </message>
    <message>
        <source>Soda lime</source>
        <comment>choice.glass.soda-lime</comment>
        <translation>Kalknatron</translation>
    </message>
    <message>
        <source>Diameter</source>
        <comment>setting.outer_diameter_mm</comment>
        <translation>Durchmesser</translation>
    </message>
    <message>
        <source>Outer diameter of the bottle's body.</source>
        <comment>setting.outer_diameter_mm.help</comment>
        <translation>Außendurchmesser des Flaschenkörpers.</translation>
    </message>
    <message>
        <source>Wall</source>
        <comment>setting.wall_mm</comment>
        <translation>Wand</translation>
    </message>
    <message>
        <source>Thickness of the wall.</source>
        <comment>setting.wall_mm.help</comment>
        <translation>Dicke der Wand.</translation>
    </message>
    <message>
        <source>Flame width</source>
        <comment>setting.ring_width_mm</comment>
        <translation>Flammenbreite</translation>
    </message>
    <message>
        <source>Width of the flame at half its heat.</source>
        <comment>setting.ring_width_mm.help</comment>
        <translation>Breite der Flamme bei halber Wärme.</translation>
    </message>
    <message>
        <source>Flame</source>
        <comment>setting.flame_kW_m2</comment>
        <translation>Flamme</translation>
    </message>
    <message>
        <source>Heat into the ring, averaged over the turn.</source>
        <comment>setting.flame_kW_m2.help</comment>
        <translation>Wärme in den Ring, über die Drehung gemittelt.</translation>
    </message>
    <message>
        <source>Score</source>
        <comment>setting.score_depth_um</comment>
        <translation>Anriss</translation>
    </message>
    <message>
        <source>Depth of the scored line; 0: none.</source>
        <comment>setting.score_depth_um.help</comment>
        <translation>Tiefe der geritzten Linie; 0: keine.</translation>
    </message>
    <message>
        <source>Drop after</source>
        <comment>setting.delay_s</comment>
        <translation>Tropfen nach</translation>
    </message>
    <message>
        <source>From the flame's end to the drop.</source>
        <comment>setting.delay_s.help</comment>
        <translation>Vom Ende der Flamme bis zum Tropfen.</translation>
    </message>
    <message>
        <source>Longest</source>
        <comment>setting.longest_s</comment>
        <translation>Längste Zeit</translation>
    </message>
    <message>
        <source>Longest heating to look at.</source>
        <comment>setting.longest_s.help</comment>
        <translation>Längstes Erhitzen, das betrachtet wird.</translation>
    </message>
    <message>
        <source>Wanted</source>
        <comment>setting.want_pct</comment>
        <translation>Gewünscht</translation>
    </message>
    <message>
        <source>Odds of success that are asked for.</source>
        <comment>setting.want_pct.help</comment>
        <translation>Erfolgswahrscheinlichkeit, die verlangt wird.</translation>
    </message>
    <message>
        <source>Wall within</source>
        <comment>setting.wall_tol_pct</comment>
        <translation>Wand auf</translation>
    </message>
    <message>
        <source>From bottle to bottle, to both sides.</source>
        <comment>setting.wall_tol_pct.help</comment>
        <translation>Von Flasche zu Flasche, nach beiden Seiten.</translation>
    </message>
    <message>
        <source>Flame within</source>
        <comment>setting.flame_tol_pct</comment>
        <translation>Flamme auf</translation>
    </message>
    <message>
        <source>From time to time, to both sides.</source>
        <comment>setting.flame_tol_pct.help</comment>
        <translation>Von Mal zu Mal, nach beiden Seiten.</translation>
    </message>
    <message>
        <source>Drop within</source>
        <comment>setting.aim_mm</comment>
        <translation>Tropfen auf</translation>
    </message>
    <message>
        <source>How far the drop may miss the ring's middle.</source>
        <comment>setting.aim_mm.help</comment>
        <translation>Wie weit der Tropfen die Ringmitte verfehlen darf.</translation>
    </message>
    <message>
        <source>Runs</source>
        <comment>setting.runs</comment>
        <translation>Läufe</translation>
    </message>
    <message>
        <source>More take longer and say it more finely.</source>
        <comment>setting.runs.help</comment>
        <translation>Mehr dauern länger und sagen es feiner.</translation>
    </message>
    <message>
        <source>16</source>
        <comment>choice.runs.16</comment>
        <translation>16</translation>
    </message>
    <message>
        <source>32</source>
        <comment>choice.runs.32</comment>
        <translation>32</translation>
    </message>
    <message>
        <source>64</source>
        <comment>choice.runs.64</comment>
        <translation>64</translation>
    </message>
    <message>
        <source>128</source>
        <comment>choice.runs.128</comment>
        <translation>128</translation>
    </message>
    <message>
        <source>256</source>
        <comment>choice.runs.256</comment>
        <translation>256</translation>
    </message>
    <message>
        <source>Seed</source>
        <comment>setting.seed</comment>
        <translation>Startzahl</translation>
    </message>
    <message>
        <source>The same seed draws the same chances again.</source>
        <comment>setting.seed.help</comment>
        <translation>Dieselbe Startzahl zieht dieselben Zufälle noch einmal.</translation>
    </message>
    <message>
        <source>Window opens</source>
        <comment>opens</comment>
        <translation>Zeitfenster öffnet</translation>
    </message>
    <message>
        <source>Window closes</source>
        <comment>closes</comment>
        <translation>Zeitfenster schließt</translation>
    </message>
    <message>
        <source>Best time in the flame</source>
        <comment>best_s</comment>
        <translation>Beste Zeit in der Flamme</translation>
    </message>
    <message>
        <source>Cracks when the drop lands</source>
        <comment>best_odds</comment>
        <translation>Reißt, wenn der Tropfen auftrifft</translation>
    </message>
    <message>
        <source>Cracks by itself or sags</source>
        <comment>best_alone</comment>
        <translation>Reißt von selbst oder sackt ein</translation>
    </message>
    <message>
        <source>Does not crack</source>
        <comment>best_none</comment>
        <translation>Reißt nicht</translation>
    </message>
    <message>
        <source>Leave the bottle in the flame for {opens:.0f} to {closes:.0f} s: then the crack comes when the drop lands in {want:.0f} of 100 tries or more.</source>
        <comment>window</comment>
        <translation>Lassen Sie die Flasche {opens:.0f} bis {closes:.0f} s in der Flamme: Dann kommt der Riss beim Auftreffen des Tropfens in mindestens {want:.0f} von 100 Versuchen.</translation>
    </message>
    <message>
        <source>Between {opens:.0f} and {closes:.0f} s that holds for nineteen of twenty bottles, however they fall within the tolerances.</source>
        <comment>surest</comment>
        <translation>Zwischen {opens:.0f} und {closes:.0f} s gilt das für neunzehn von zwanzig Flaschen, wie immer sie in den Toleranzen liegen.</translation>
    </message>
    <message>
        <source>No single time suits all bottles within the tolerances: measure walls and flame better, or try one first.</source>
        <comment>no_surest</comment>
        <translation>Keine einzelne Zeit passt für alle Flaschen in den Toleranzen: Wände und Flamme genauer messen oder erst eine ausprobieren.</translation>
    </message>
    <message>
        <source>No time in the flame gives {want:.0f} %: at best {odds:.0f} %, after {best:.0f} s. A deeper score, another flame or a quicker drop may help.</source>
        <comment>no_window</comment>
        <translation>Keine Zeit in der Flamme ergibt {want:.0f} %: bestenfalls {odds:.0f} %, nach {best:.0f} s. Ein tieferer Anriss, eine andere Flamme oder ein schnellerer Tropfen können helfen.</translation>
    </message>
    <message>
        <source>It would stay good for longer than the {longest:.0f} s that were looked at.</source>
        <comment>open_end</comment>
        <translation>Es bliebe länger gut als die {longest:.0f} s, die betrachtet wurden.</translation>
    </message>
    <message>
        <source>Shorter, and the drop finds the ring too cool: nothing happens. Longer, and heat alone cracks it, before the drop.</source>
        <comment>wait_cold</comment>
        <translation>Kürzer, und der Tropfen trifft den Ring zu kühl: nichts geschieht. Länger, und die Hitze allein lässt sie vor dem Tropfen reißen.</translation>
    </message>
    <message>
        <source>What happens, by time in the flame</source>
        <comment>fates</comment>
        <translation>Was geschieht, nach Zeit in der Flamme</translation>
    </message>
    <message>
        <source>time in the flame</source>
        <comment>seconds</comment>
        <translation>Zeit in der Flamme</translation>
    </message>
    <message>
        <source>odds</source>
        <comment>odds</comment>
        <translation>Wahrscheinlichkeit</translation>
    </message>
    <message>
        <source>cracks at the drop</source>
        <comment>drop</comment>
        <translation>reißt beim Tropfen</translation>
    </message>
    <message>
        <source>by itself, or sags</source>
        <comment>alone</comment>
        <translation>von selbst, oder sackt ein</translation>
    </message>
    <message>
        <source>does not crack</source>
        <comment>none</comment>
        <translation>reißt nicht</translation>
    </message>
    <message>
        <source>wanted</source>
        <comment>want</comment>
        <translation>gewünscht</translation>
    </message>
    <message>
        <source>The flame is a ring that burns evenly around a turning bottle, and the drop a full ring of water. A bottle that does not turn is another case.</source>
        <comment>limit_ring</comment>
        <translation>Die Flamme ist ein Ring, der gleichmäßig um eine drehende Flasche brennt, der Tropfen ein voller Ring aus Wasser. Eine Flasche, die sich nicht dreht, ist ein anderer Fall.</translation>
    </message>
    <message>
        <source>Each bottle is heated once; what the drop does is run at a few heating times and interpolated between them.</source>
        <comment>limit_followed</comment>
        <translation>Jede Flasche wird einmal erhitzt; was der Tropfen bewirkt, wird für einige Heizzeiten gerechnet und dazwischen interpoliert.</translation>
    </message>
    <message>
        <source>The score's depth scatters by a factor of 1.3 about what is stated (hand scoring, assumed), and old scratches elsewhere are those of ordinary handled ware.</source>
        <comment>limit_score</comment>
        <translation>Die Tiefe des Anrisses streut um den Faktor 1,3 um die Angabe (Anritzen von Hand, angenommen); alte Kratzer sonst sind die gewöhnlich benutzter Ware.</translation>
    </message>
    <message>
        <source>Sagging is taken to begin where the ring's outside reaches the softening point.</source>
        <comment>limit_sag</comment>
        <translation>Das Einsacken beginnt, wo der Ring außen den Erweichungspunkt erreicht (Annahme).</translation>
    </message>
</context>
<context>
    <name>bench.oven</name>
    <message>
        <source>Which oven programme is the shortest for my piece, and what does an opened door do?</source>
        <comment>help</comment>
        <translation>Welches Ofenprogramm ist für mein Stück das kürzeste, und was bewirkt eine geöffnete Tür?</translation>
    </message>
    <message>
        <source>Glass</source>
        <comment>setting.glass</comment>
        <translation>Glas</translation>
    </message>
    <message>
        <source>What it is made of.</source>
        <comment>setting.glass.help</comment>
        <translation>Woraus es besteht.</translation>
    </message>
    <message>
        <source>Borosilicate</source>
        <comment>choice.glass.borosilicate</comment>
        <translation>Borosilikat</translation>
    </message>
    <message>
        <source>Fused silica</source>
        <comment>choice.glass.fused-silica</comment>
        <translation>Kieselglas</translation>
    </message>
    <message>
        <source>Lead crystal</source>
        <comment>choice.glass.lead-crystal</comment>
        <translation>Bleikristall</translation>
    </message>
    <message>
        <source>Soda lime</source>
        <comment>choice.glass.soda-lime</comment>
        <translation>Kalknatron</translation>
    </message>
    <message>
        <source>Thickest</source>
        <comment>setting.thickness_mm</comment>
        <translation>Dickste Stelle</translation>
    </message>
    <message>
        <source>The thickest section of the piece.</source>
        <comment>setting.thickness_mm.help</comment>
        <translation>Der dickste Querschnitt des Stücks.</translation>
    </message>
    <message>
        <source>Heat leaves by</source>
        <comment>setting.faces</comment>
        <translation>Wärme geht ab über</translation>
    </message>
    <message>
        <source>Both faces, or one alone: a hollow piece, or one that stands on its shelf.</source>
        <comment>setting.faces.help</comment>
        <translation>Beide Flächen oder nur eine: ein hohles Stück, oder eines, das auf seiner Platte steht.</translation>
    </message>
    <message>
        <source>Both</source>
        <comment>choice.faces.both</comment>
        <translation>Beide</translation>
    </message>
    <message>
        <source>One</source>
        <comment>choice.faces.one</comment>
        <translation>Eine</translation>
    </message>
    <message>
        <source>Good enough for</source>
        <comment>setting.limit</comment>
        <translation>Gut genug für</translation>
    </message>
    <message>
        <source>optics: 10 nm/cm; magnifier: 20 nm/cm; ware: temper number 4, bottles.</source>
        <comment>setting.limit.help</comment>
        <translation>Optik: 10 nm/cm; Lupe: 20 nm/cm; Gebrauchsglas: Kühlgüte 4, Flaschen.</translation>
    </message>
    <message>
        <source>Optics</source>
        <comment>choice.limit.optics</comment>
        <translation>Optik</translation>
    </message>
    <message>
        <source>Magnifier</source>
        <comment>choice.limit.magnifier</comment>
        <translation>Lupe</translation>
    </message>
    <message>
        <source>Ware</source>
        <comment>choice.limit.ware</comment>
        <translation>Gebrauchsglas</translation>
    </message>
    <message>
        <source>Comes in cold</source>
        <comment>setting.comes_cold</comment>
        <translation>Kommt kalt hinein</translation>
    </message>
    <message>
        <source>Whether the piece must first be heated up with the oven.</source>
        <comment>setting.comes_cold.help</comment>
        <translation>Ob das Stück erst mit dem Ofen aufgeheizt werden muss.</translation>
    </message>
    <message>
        <source>Door is opened</source>
        <comment>setting.door</comment>
        <translation>Tür wird geöffnet</translation>
    </message>
    <message>
        <source>Whether somebody opens it on the way.</source>
        <comment>setting.door.help</comment>
        <translation>Ob sie unterwegs jemand öffnet.</translation>
    </message>
    <message>
        <source>Door opens at</source>
        <comment>setting.door_at_min</comment>
        <translation>Tür öffnet bei</translation>
    </message>
    <message>
        <source>Minutes after the hold begins.</source>
        <comment>setting.door_at_min.help</comment>
        <translation>Minuten nach Beginn des Haltens.</translation>
    </message>
    <message>
        <source>Door open for</source>
        <comment>setting.door_for_min</comment>
        <translation>Tür offen für</translation>
    </message>
    <message>
        <source>How long air and walls stay cooler.</source>
        <comment>setting.door_for_min.help</comment>
        <translation>Wie lange Luft und Wände kühler bleiben.</translation>
    </message>
    <message>
        <source>Falls to</source>
        <comment>setting.door_C</comment>
        <translation>Fällt auf</translation>
    </message>
    <message>
        <source>What air and walls fall to meanwhile.</source>
        <comment>setting.door_C.help</comment>
        <translation>Worauf Luft und Wände solange fallen.</translation>
    </message>
    <message>
        <source>Thickness within</source>
        <comment>setting.thickness_tol_pct</comment>
        <translation>Dicke auf</translation>
    </message>
    <message>
        <source>To both sides.</source>
        <comment>setting.thickness_tol_pct.help</comment>
        <translation>Nach beiden Seiten.</translation>
    </message>
    <message>
        <source>Oven within</source>
        <comment>setting.oven_tol_C</comment>
        <translation>Ofen auf</translation>
    </message>
    <message>
        <source>Error of the oven's thermometer, to both sides.</source>
        <comment>setting.oven_tol_C.help</comment>
        <translation>Fehler des Ofenthermometers, nach beiden Seiten.</translation>
    </message>
    <message>
        <source>Air within</source>
        <comment>setting.air_tol_pct</comment>
        <translation>Luft auf</translation>
    </message>
    <message>
        <source>How well its fan stirs, to both sides.</source>
        <comment>setting.air_tol_pct.help</comment>
        <translation>Wie gut sein Ventilator rührt, nach beiden Seiten.</translation>
    </message>
    <message>
        <source>Runs</source>
        <comment>setting.runs</comment>
        <translation>Läufe</translation>
    </message>
    <message>
        <source>More take longer and say it more finely.</source>
        <comment>setting.runs.help</comment>
        <translation>Mehr dauern länger und sagen es feiner.</translation>
    </message>
    <message>
        <source>16</source>
        <comment>choice.runs.16</comment>
        <translation>16</translation>
    </message>
    <message>
        <source>32</source>
        <comment>choice.runs.32</comment>
        <translation>32</translation>
    </message>
    <message>
        <source>64</source>
        <comment>choice.runs.64</comment>
        <translation>64</translation>
    </message>
    <message>
        <source>128</source>
        <comment>choice.runs.128</comment>
        <translation>128</translation>
    </message>
    <message>
        <source>256</source>
        <comment>choice.runs.256</comment>
        <translation>256</translation>
    </message>
    <message>
        <source>Seed</source>
        <comment>setting.seed</comment>
        <translation>Startzahl</translation>
    </message>
    <message>
        <source>The same seed draws the same chances again.</source>
        <comment>setting.seed.help</comment>
        <translation>Dieselbe Startzahl zieht dieselben Zufälle noch einmal.</translation>
    </message>
    <message>
        <source>Until it is cold</source>
        <comment>hours</comment>
        <translation>Bis es kalt ist</translation>
    </message>
    <message>
        <source>Left in the piece</source>
        <comment>birefringence</comment>
        <translation>Bleibt im Stück</translation>
    </message>
    <message>
        <source>Temper number</source>
        <comment>temper</comment>
        <translation>Kühlgüte</translation>
    </message>
    <message>
        <source>Good enough</source>
        <comment>passes</comment>
        <translation>Gut genug</translation>
    </message>
    <message>
        <source>Largest pull on the way</source>
        <comment>pull</comment>
        <translation>Größter Zug unterwegs</translation>
    </message>
    <message>
        <source>Cracks on the way</source>
        <comment>cracks</comment>
        <translation>Reißt unterwegs</translation>
    </message>
    <message>
        <source>Left, door opened</source>
        <comment>door_birefringence</comment>
        <translation>Bleibt, Tür geöffnet</translation>
    </message>
    <message>
        <source>Good enough, door opened</source>
        <comment>door_passes</comment>
        <translation>Gut genug, Tür geöffnet</translation>
    </message>
    <message>
        <source>Largest pull, door opened</source>
        <comment>door_pull</comment>
        <translation>Größter Zug, Tür geöffnet</translation>
    </message>
    <message>
        <source>Cracks, door opened</source>
        <comment>door_cracks</comment>
        <translation>Reißt, Tür geöffnet</translation>
    </message>
    <message>
        <source>Hold at {hold:.0f} °C for {minutes:.0f} minutes, cool at {slow:.3g} °C/h down to {slow_to:.0f} °C, then at {fast:.3g} °C/h: {hours:.1f} hours in all.</source>
        <comment>programme</comment>
        <translation>Bei {hold:.0f} °C {minutes:.0f} Minuten halten, mit {slow:.3g} °C/h bis {slow_to:.0f} °C kühlen, dann mit {fast:.3g} °C/h: zusammen {hours:.1f} Stunden.</translation>
    </message>
    <message>
        <source>Nine of ten such pieces keep at most {high:.3g} nm on each centimetre; {limit:.3g} are allowed.</source>
        <comment>passes_well</comment>
        <translation>Neun von zehn solchen Stücken behalten höchstens {high:.3g} nm je Zentimeter; {limit:.3g} sind erlaubt.</translation>
    </message>
    <message>
        <source>Within the tolerances it may keep up to {high:.3g} nm on each centimetre, and {limit:.3g} are allowed: {odds:.0f} % pass. A wider tolerance of the thickness makes the programme slower.</source>
        <comment>passes_badly</comment>
        <translation>Innerhalb der Toleranzen kann es bis zu {high:.3g} nm je Zentimeter behalten, {limit:.3g} sind erlaubt: {odds:.0f} % bestehen. Eine weitere Dickentoleranz macht das Programm langsamer.</translation>
    </message>
    <message>
        <source>The opened door leaves little behind: at most {high:.3g} nm on each centimetre stay.</source>
        <comment>door_harmless</comment>
        <translation>Die geöffnete Tür lässt wenig zurück: höchstens {high:.3g} nm je Zentimeter bleiben.</translation>
    </message>
    <message>
        <source>The opened door spoils it: {middle:.3g} nm on each centimetre stay in place of {calm:.3g}, and only {odds:.0f} % pass. Anneal the piece again.</source>
        <comment>door_spoils</comment>
        <translation>Die geöffnete Tür verdirbt es: {middle:.3g} nm je Zentimeter bleiben statt {calm:.3g}, und nur {odds:.0f} % bestehen. Kühlen Sie das Stück noch einmal.</translation>
    </message>
    <message>
        <source>For a time its chill pulls the skin with up to {pull:.0f} MPa, more than the {trusted:.0f} MPa that annealed glass is customarily trusted with: a bruised piece may crack.</source>
        <comment>door_pulls</comment>
        <translation>Eine Zeit lang zieht ihre Kälte mit bis zu {pull:.0f} MPa an der Oberfläche, mehr als die {trusted:.0f} MPa, die man gekühltem Glas üblicherweise zutraut: Ein beschädigtes Stück kann reißen.</translation>
    </message>
    <message>
        <source>The chill pulls the skin with up to {pull:.0f} MPa: {odds:.0f} in 100 handled pieces crack at the door.</source>
        <comment>door_cracks_it</comment>
        <translation>Die Kälte zieht mit bis zu {pull:.0f} MPa an der Oberfläche: {odds:.0f} von 100 benutzten Stücken reißen an der Tür.</translation>
    </message>
    <message>
        <source>For the oven's controller</source>
        <comment>segments</comment>
        <translation>Für den Ofenregler</translation>
    </message>
    <message>
        <source>segment</source>
        <comment>segment</comment>
        <translation>Abschnitt</translation>
    </message>
    <message>
        <source>heat up</source>
        <comment>up</comment>
        <translation>aufheizen</translation>
    </message>
    <message>
        <source>hold</source>
        <comment>hold</comment>
        <translation>halten</translation>
    </message>
    <message>
        <source>cool slowly</source>
        <comment>slow</comment>
        <translation>langsam kühlen</translation>
    </message>
    <message>
        <source>cool faster</source>
        <comment>fast</comment>
        <translation>schneller kühlen</translation>
    </message>
    <message>
        <source>rate</source>
        <comment>rate</comment>
        <translation>Rate</translation>
    </message>
    <message>
        <source>to</source>
        <comment>to</comment>
        <translation>bis</translation>
    </message>
    <message>
        <source>hold for</source>
        <comment>for</comment>
        <translation>halten für</translation>
    </message>
    <message>
        <source>ends at h:min</source>
        <comment>ends</comment>
        <translation>endet bei h:min</translation>
    </message>
    <message>
        <source>temperature</source>
        <comment>temperature</comment>
        <translation>Temperatur</translation>
    </message>
    <message>
        <source>time</source>
        <comment>time</comment>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>oven</source>
        <comment>oven</comment>
        <translation>Ofen</translation>
    </message>
    <message>
        <source>middle of the glass, door opened</source>
        <comment>inside</comment>
        <translation>Glasmitte, Tür geöffnet</translation>
    </message>
    <message>
        <source>its surface, door opened</source>
        <comment>outside</comment>
        <translation>seine Oberfläche, Tür geöffnet</translation>
    </message>
    <message>
        <source>strain point</source>
        <comment>strain</comment>
        <translation>unterer Kühlpunkt</translation>
    </message>
    <message>
        <source>The programme is laid out for the thickest piece within the tolerance.</source>
        <comment>limit_design</comment>
        <translation>Das Programm ist für das dickste Stück in der Toleranz ausgelegt.</translation>
    </message>
    <message>
        <source>The thickest section is taken as a wide plate of even thickness. Feet, rims and joints of thick and thin keep more: leave a margin, and look at the piece.</source>
        <comment>limit_plate</comment>
        <translation>Der dickste Querschnitt ist als weite Platte gleicher Dicke angenommen. Füße, Ränder und Übergänge von dick zu dünn behalten mehr: Reserve lassen und das Stück ansehen.</translation>
    </message>
    <message>
        <source>A section that loses heat by one face alone counts as a plate twice as thick.</source>
        <comment>limit_one</comment>
        <translation>Ein Querschnitt, der nur über eine Fläche Wärme abgibt, zählt als doppelt so dicke Platte.</translation>
    </message>
    <message>
        <source>Times count from the beginning of the hold, and a piece that comes in cold is taken as hot and even by then: its heating up is not run.</source>
        <comment>limit_cold</comment>
        <translation>Die Zeiten zählen ab Beginn des Haltens; ein kalt eingesetztes Stück gilt bis dahin als gleichmäßig heiß: Sein Aufheizen wird nicht gerechnet.</translation>
    </message>
    <message>
        <source>While the door is open, air and walls are taken as cool as stated, and as told once it is shut; a heavy oven's walls stay hotter than that.</source>
        <comment>limit_door</comment>
        <translation>Bei offener Tür sind Luft und Wände so kühl wie angegeben, danach wieder nach Programm; die Wände eines schweren Ofens bleiben heißer.</translation>
    </message>
    <message>
        <source>The limit is that of stress that stays; colour, bubbles and stones are another matter. A glass of unknown make needs its own annealing point.</source>
        <comment>limit_rest</comment>
        <translation>Die Grenze gilt der bleibenden Spannung; Farbe, Blasen und Steinchen sind eine andere Sache. Glas unbekannter Herkunft braucht seinen eigenen oberen Kühlpunkt.</translation>
    </message>
</context>
<context>
    <name>bench.toughness</name>
    <message>
        <source>How tough is my sample, which grade is it, and how will it break?</source>
        <comment>help</comment>
        <translation>Wie fest ist meine Probe, welcher Klasse gehört sie an, und wie wird sie brechen?</translation>
    </message>
    <message>
        <source>What is known</source>
        <comment>setting.known</comment>
        <translation>Was bekannt ist</translation>
    </message>
    <message>
        <source>Its cooling; or a reading through its edge; or one of a surface instrument.</source>
        <comment>setting.known.help</comment>
        <translation>Ihr Abkühlen; oder ein Messwert durch ihre Kante; oder der eines Oberflächengeräts.</translation>
    </message>
    <message>
        <source>Cooling</source>
        <comment>choice.known.cooling</comment>
        <translation>Abkühlen</translation>
    </message>
    <message>
        <source>Edge</source>
        <comment>choice.known.edge</comment>
        <translation>Kante</translation>
    </message>
    <message>
        <source>Face</source>
        <comment>choice.known.face</comment>
        <translation>Fläche</translation>
    </message>
    <message>
        <source>Glass</source>
        <comment>setting.glass</comment>
        <translation>Glas</translation>
    </message>
    <message>
        <source>What it is made of.</source>
        <comment>setting.glass.help</comment>
        <translation>Woraus es besteht.</translation>
    </message>
    <message>
        <source>Borosilicate</source>
        <comment>choice.glass.borosilicate</comment>
        <translation>Borosilikat</translation>
    </message>
    <message>
        <source>Fused silica</source>
        <comment>choice.glass.fused-silica</comment>
        <translation>Kieselglas</translation>
    </message>
    <message>
        <source>Lead crystal</source>
        <comment>choice.glass.lead-crystal</comment>
        <translation>Bleikristall</translation>
    </message>
    <message>
        <source>Soda lime</source>
        <comment>choice.glass.soda-lime</comment>
        <translation>Kalknatron</translation>
    </message>
    <message>
        <source>Thickness</source>
        <comment>setting.thickness_mm</comment>
        <translation>Dicke</translation>
    </message>
    <message>
        <source>Of the plate.</source>
        <comment>setting.thickness_mm.help</comment>
        <translation>Der Platte.</translation>
    </message>
    <message>
        <source>Start</source>
        <comment>setting.start_C</comment>
        <translation>Start</translation>
    </message>
    <message>
        <source>Heat when the jets start (cooling).</source>
        <comment>setting.start_C.help</comment>
        <translation>Temperatur, wenn die Düsen beginnen (Abkühlen).</translation>
    </message>
    <message>
        <source>Jets</source>
        <comment>setting.jet_W_m2K</comment>
        <translation>Düsen</translation>
    </message>
    <message>
        <source>15: hardly more than still air (cooling).</source>
        <comment>setting.jet_W_m2K.help</comment>
        <translation>15: kaum mehr als ruhende Luft (Abkühlen).</translation>
    </message>
    <message>
        <source>Read at</source>
        <comment>setting.edge_at</comment>
        <translation>Gemessen in</translation>
    </message>
    <message>
        <source>Where in the thickness (edge).</source>
        <comment>setting.edge_at.help</comment>
        <translation>Wo in der Dicke (Kante).</translation>
    </message>
    <message>
        <source>Middle</source>
        <comment>choice.edge_at.middle</comment>
        <translation>Mitte</translation>
    </message>
    <message>
        <source>Skin</source>
        <comment>choice.edge_at.skin</comment>
        <translation>Oberfläche</translation>
    </message>
    <message>
        <source>Retardation</source>
        <comment>setting.edge_nm</comment>
        <translation>Gangunterschied</translation>
    </message>
    <message>
        <source>Read through the edge (edge).</source>
        <comment>setting.edge_nm.help</comment>
        <translation>Durch die Kante gemessen (Kante).</translation>
    </message>
    <message>
        <source>Path</source>
        <comment>setting.path_mm</comment>
        <translation>Lichtweg</translation>
    </message>
    <message>
        <source>Way of the light through the glass (edge).</source>
        <comment>setting.path_mm.help</comment>
        <translation>Weg des Lichts durch das Glas (Kante).</translation>
    </message>
    <message>
        <source>Surface reading</source>
        <comment>setting.face_MPa</comment>
        <translation>Oberflächenmesswert</translation>
    </message>
    <message>
        <source>Squeeze, by a surface instrument (face).</source>
        <comment>setting.face_MPa.help</comment>
        <translation>Druck, mit einem Oberflächengerät (Fläche).</translation>
    </message>
    <message>
        <source>Thickness within</source>
        <comment>setting.thickness_tol_pct</comment>
        <translation>Dicke auf</translation>
    </message>
    <message>
        <source>To both sides.</source>
        <comment>setting.thickness_tol_pct.help</comment>
        <translation>Nach beiden Seiten.</translation>
    </message>
    <message>
        <source>Start within</source>
        <comment>setting.start_tol_C</comment>
        <translation>Start auf</translation>
    </message>
    <message>
        <source>To both sides (cooling).</source>
        <comment>setting.start_tol_C.help</comment>
        <translation>Nach beiden Seiten (Abkühlen).</translation>
    </message>
    <message>
        <source>Jets within</source>
        <comment>setting.jet_tol_pct</comment>
        <translation>Düsen auf</translation>
    </message>
    <message>
        <source>To both sides (cooling).</source>
        <comment>setting.jet_tol_pct.help</comment>
        <translation>Nach beiden Seiten (Abkühlen).</translation>
    </message>
    <message>
        <source>Reading within</source>
        <comment>setting.reading_tol_pct</comment>
        <translation>Messwert auf</translation>
    </message>
    <message>
        <source>To both sides (edge, face).</source>
        <comment>setting.reading_tol_pct.help</comment>
        <translation>Nach beiden Seiten (Kante, Fläche).</translation>
    </message>
    <message>
        <source>Runs</source>
        <comment>setting.runs</comment>
        <translation>Läufe</translation>
    </message>
    <message>
        <source>More take longer and say it more finely.</source>
        <comment>setting.runs.help</comment>
        <translation>Mehr dauern länger und sagen es feiner.</translation>
    </message>
    <message>
        <source>16</source>
        <comment>choice.runs.16</comment>
        <translation>16</translation>
    </message>
    <message>
        <source>32</source>
        <comment>choice.runs.32</comment>
        <translation>32</translation>
    </message>
    <message>
        <source>64</source>
        <comment>choice.runs.64</comment>
        <translation>64</translation>
    </message>
    <message>
        <source>128</source>
        <comment>choice.runs.128</comment>
        <translation>128</translation>
    </message>
    <message>
        <source>256</source>
        <comment>choice.runs.256</comment>
        <translation>256</translation>
    </message>
    <message>
        <source>Seed</source>
        <comment>setting.seed</comment>
        <translation>Startzahl</translation>
    </message>
    <message>
        <source>The same seed draws the same chances again.</source>
        <comment>setting.seed.help</comment>
        <translation>Dieselbe Startzahl zieht dieselben Zufälle noch einmal.</translation>
    </message>
    <message>
        <source>Squeeze at the surface</source>
        <comment>surface</comment>
        <translation>Druck an der Oberfläche</translation>
    </message>
    <message>
        <source>Pull in the middle</source>
        <comment>middle</comment>
        <translation>Zug in der Mitte</translation>
    </message>
    <message>
        <source>Particles in 50 mm by 50 mm</source>
        <comment>particles</comment>
        <translation>Bruchstücke in 50 mm mal 50 mm</translation>
    </message>
    <message>
        <source>Times as strong, used</source>
        <comment>ratio</comment>
        <translation>So viel fester, benutzt</translation>
    </message>
    <message>
        <source>Bending strength, new</source>
        <comment>strength</comment>
        <translation>Biegefestigkeit, neu</translation>
    </message>
    <message>
        <source>Blow that breaks half of them</source>
        <comment>blow</comment>
        <translation>Schlag, der die Hälfte bricht</translation>
    </message>
    <message>
        <source>A crack runs by itself</source>
        <comment>runs_by_itself</comment>
        <translation>Ein Riss läuft von selbst</translation>
    </message>
    <message>
        <source>Grade: annealed</source>
        <comment>is_annealed</comment>
        <translation>Klasse: gekühlt</translation>
    </message>
    <message>
        <source>Grade: heat-strengthened</source>
        <comment>is_heat-strengthened</comment>
        <translation>Klasse: teilvorgespannt</translation>
    </message>
    <message>
        <source>Grade: toughened</source>
        <comment>is_toughened</comment>
        <translation>Klasse: vorgespannt</translation>
    </message>
    <message>
        <source>Within what is known, it is {grade}: {odds:.0f} of 100 such plates are.</source>
        <comment>sure</comment>
        <translation>Nach allem, was bekannt ist, ist sie {grade}: {odds:.0f} von 100 solchen Platten sind es.</translation>
    </message>
    <message>
        <source>It may be {grade} ({odds:.0f} of 100 such plates) or {other} ({rest:.0f}): measure again, or treat it as whichever breaks worse.</source>
        <comment>unsure</comment>
        <translation>Sie kann {grade} sein ({odds:.0f} von 100 solchen Platten) oder {other} ({rest:.0f}): noch einmal messen, oder so behandeln, als bräche sie auf die schlimmere Art.</translation>
    </message>
    <message>
        <source>When it breaks, all of it goes at once, into some {low:.0f} to {high:.0f} particles in 50 mm by 50 mm.</source>
        <comment>dice</comment>
        <translation>Bricht sie, so alles auf einmal, in etwa {low:.0f} bis {high:.0f} Bruchstücke in 50 mm mal 50 mm.</translation>
    </message>
    <message>
        <source>When it breaks, cracks run by themselves, but into pieces larger than the standard asks of toughened glass: {asked:.0f} in 50 mm by 50 mm.</source>
        <comment>coarse</comment>
        <translation>Bricht sie, laufen Risse von selbst, aber in größere Stücke, als die Norm von vorgespanntem Glas verlangt: {asked:.0f} in 50 mm mal 50 mm.</translation>
    </message>
    <message>
        <source>When it breaks, it parts into long sharp shards like plain glass: it holds too little energy for dice.</source>
        <comment>shards</comment>
        <translation>Bricht sie, so in lange scharfe Scherben wie normales Glas: Für Krümel steckt zu wenig Energie in ihr.</translation>
    </message>
    <message>
        <source>Under a load that stays, used, it bears {low:.1f} to {high:.1f} times as much as a plain plate.</source>
        <comment>load</comment>
        <translation>Unter einer bleibenden Last trägt sie, benutzt, das {low:.1f}- bis {high:.1f}-Fache einer normalen Platte.</translation>
    </message>
    <message>
        <source>Grades</source>
        <comment>grades</comment>
        <translation>Klassen</translation>
    </message>
    <message>
        <source>grade</source>
        <comment>grade</comment>
        <translation>Klasse</translation>
    </message>
    <message>
        <source>odds</source>
        <comment>odds</comment>
        <translation>Wahrscheinlichkeit</translation>
    </message>
    <message>
        <source>least squeeze</source>
        <comment>asked</comment>
        <translation>Mindestdruck</translation>
    </message>
    <message>
        <source>annealed</source>
        <comment>annealed</comment>
        <translation>gekühlt</translation>
    </message>
    <message>
        <source>heat-strengthened</source>
        <comment>heat-strengthened</comment>
        <translation>teilvorgespannt</translation>
    </message>
    <message>
        <source>toughened</source>
        <comment>toughened</comment>
        <translation>vorgespannt</translation>
    </message>
    <message>
        <source>depth below the surface</source>
        <comment>depth</comment>
        <translation>Tiefe unter der Oberfläche</translation>
    </message>
    <message>
        <source>stress</source>
        <comment>stress</comment>
        <translation>Spannung</translation>
    </message>
    <message>
        <source>most likely</source>
        <comment>through</comment>
        <translation>am wahrscheinlichsten</translation>
    </message>
    <message>
        <source>weakest of twenty</source>
        <comment>low</comment>
        <translation>schwächste von zwanzig</translation>
    </message>
    <message>
        <source>strongest of twenty</source>
        <comment>high</comment>
        <translation>stärkste von zwanzig</translation>
    </message>
    <message>
        <source>By surface compression: heat-strengthened from 24, toughened from 69 MPa (ASTM C1048); by particles: EN 12150-1. A grade is what a factory's tests give, not this.</source>
        <comment>limit_surface</comment>
        <translation>Nach Oberflächendruck: teilvorgespannt ab 24, vorgespannt ab 69 MPa (ASTM C1048); nach Bruchstücken: EN 12150-1. Eine Klasse ergibt die Prüfung im Werk, nicht dies hier.</translation>
    </message>
    <message>
        <source>The plate is wide, cooled alike on both faces, and has no holes; edges and corners are weaker.</source>
        <comment>limit_even</comment>
        <translation>Die Platte ist weit, auf beiden Flächen gleich gekühlt und ohne Löcher; Kanten und Ecken sind schwächer.</translation>
    </message>
    <message>
        <source>Through the edge, the stress in the middle stands for that at the surface by {ratio:.1f} to 1; light that is not parallel to the faces blurs the skin's reading.</source>
        <comment>limit_edge</comment>
        <translation>Durch die Kante steht die Spannung der Mitte zu der der Oberfläche im Verhältnis {ratio:.1f} zu 1; Licht, das nicht parallel zu den Flächen läuft, verwischt den Messwert der Oberfläche.</translation>
    </message>
    <message>
        <source>A surface instrument reads the tin side of float alone (ASTM C1279).</source>
        <comment>limit_face</comment>
        <translation>Ein Oberflächengerät misst bei Floatglas nur die Zinnseite (ASTM C1279).</translation>
    </message>
    <message>
        <source>Particles follow from the energy inside, by one fraction that was fitted to plates of 6 mm; patterns differ from plate to plate.</source>
        <comment>limit_dice</comment>
        <translation>Die Bruchstücke folgen aus der Energie im Innern, mit einem Anteil, der an Platten von 6 mm angepasst wurde; Bruchbilder sind von Platte zu Platte verschieden.</translation>
    </message>
</context>
<context>
    <name>bench.bubbles</name>
    <message>
        <source>How deep a scratch and how hard a blow do my bubbles need, and how many of ten will behave?</source>
        <comment>help</comment>
        <translation>Wie tief muss der Kratzer und wie hart der Schlag für meine Kolben sein, und wie viele von zehn verhalten sich richtig?</translation>
    </message>
    <message>
        <source>Glass</source>
        <comment>setting.glass</comment>
        <translation>Glas</translation>
    </message>
    <message>
        <source>What they are made of.</source>
        <comment>setting.glass.help</comment>
        <translation>Woraus sie bestehen.</translation>
    </message>
    <message>
        <source>Borosilicate</source>
        <comment>choice.glass.borosilicate</comment>
        <translation>Borosilikat</translation>
    </message>
    <message>
        <source>Fused silica</source>
        <comment>choice.glass.fused-silica</comment>
        <translation>Kieselglas</translation>
    </message>
    <message>
        <source>Lead crystal</source>
        <comment>choice.glass.lead-crystal</comment>
        <translation>Bleikristall</translation>
    </message>
    <message>
        <source>Soda lime</source>
        <comment>choice.glass.soda-lime</comment>
        <translation>Kalknatron</translation>
    </message>
    <message>
        <source>Diameter</source>
        <comment>setting.outer_diameter_mm</comment>
        <translation>Durchmesser</translation>
    </message>
    <message>
        <source>Outer diameter of the flask.</source>
        <comment>setting.outer_diameter_mm.help</comment>
        <translation>Außendurchmesser des Kolbens.</translation>
    </message>
    <message>
        <source>Length</source>
        <comment>setting.length_mm</comment>
        <translation>Länge</translation>
    </message>
    <message>
        <source>From the foot to the mouth.</source>
        <comment>setting.length_mm.help</comment>
        <translation>Vom Boden bis zur Mündung.</translation>
    </message>
    <message>
        <source>Foot</source>
        <comment>setting.base_mm</comment>
        <translation>Boden</translation>
    </message>
    <message>
        <source>Thickness in the middle of the foot.</source>
        <comment>setting.base_mm.help</comment>
        <translation>Dicke in der Mitte des Bodens.</translation>
    </message>
    <message>
        <source>Wall</source>
        <comment>setting.wall_mm</comment>
        <translation>Wand</translation>
    </message>
    <message>
        <source>Thickness of the wall.</source>
        <comment>setting.wall_mm.help</comment>
        <translation>Dicke der Wand.</translation>
    </message>
    <message>
        <source>Cooled</source>
        <comment>setting.way</comment>
        <translation>Gekühlt</translation>
    </message>
    <message>
        <source>In the open, or by an oven programme.</source>
        <comment>setting.way.help</comment>
        <translation>An der Luft oder nach einem Ofenprogramm.</translation>
    </message>
    <message>
        <source>Air</source>
        <comment>choice.way.air</comment>
        <translation>Luft</translation>
    </message>
    <message>
        <source>Oven</source>
        <comment>choice.way.oven</comment>
        <translation>Ofen</translation>
    </message>
    <message>
        <source>Blow</source>
        <comment>setting.blow_J</comment>
        <translation>Schlag</translation>
    </message>
    <message>
        <source>Energy of a soft blow on the foot, from outside.</source>
        <comment>setting.blow_J.help</comment>
        <translation>Energie eines weichen Schlags von außen auf den Boden.</translation>
    </message>
    <message>
        <source>Scratch</source>
        <comment>setting.scratch_um</comment>
        <translation>Kratzer</translation>
    </message>
    <message>
        <source>Depth meant for the scratch inside the foot.</source>
        <comment>setting.scratch_um.help</comment>
        <translation>Beabsichtigte Tiefe des Kratzers innen im Boden.</translation>
    </message>
    <message>
        <source>Batch</source>
        <comment>setting.batch</comment>
        <translation>Charge</translation>
    </message>
    <message>
        <source>How many are brought on stage.</source>
        <comment>setting.batch.help</comment>
        <translation>Wie viele auf die Bühne kommen.</translation>
    </message>
    <message>
        <source>Spread is from</source>
        <comment>setting.spread_is</comment>
        <translation>Streuung von</translation>
    </message>
    <message>
        <source>Whether each flask differs, or all of one batch are alike.</source>
        <comment>setting.spread_is.help</comment>
        <translation>Ob jeder Kolben anders ist oder alle einer Charge gleich.</translation>
    </message>
    <message>
        <source>Flask to flask</source>
        <comment>choice.spread_is.flask to flask</comment>
        <translation>Kolben zu Kolben</translation>
    </message>
    <message>
        <source>Batch to batch</source>
        <comment>choice.spread_is.batch to batch</comment>
        <translation>Charge zu Charge</translation>
    </message>
    <message>
        <source>Foot within</source>
        <comment>setting.base_tol_pct</comment>
        <translation>Boden auf</translation>
    </message>
    <message>
        <source>To both sides.</source>
        <comment>setting.base_tol_pct.help</comment>
        <translation>Nach beiden Seiten.</translation>
    </message>
    <message>
        <source>Wall within</source>
        <comment>setting.wall_tol_pct</comment>
        <translation>Wand auf</translation>
    </message>
    <message>
        <source>To both sides.</source>
        <comment>setting.wall_tol_pct.help</comment>
        <translation>Nach beiden Seiten.</translation>
    </message>
    <message>
        <source>Cooling within</source>
        <comment>setting.air_tol_pct</comment>
        <translation>Abkühlen auf</translation>
    </message>
    <message>
        <source>Draught and hand, to both sides.</source>
        <comment>setting.air_tol_pct.help</comment>
        <translation>Zugluft und Hand, nach beiden Seiten.</translation>
    </message>
    <message>
        <source>Runs</source>
        <comment>setting.runs</comment>
        <translation>Läufe</translation>
    </message>
    <message>
        <source>More take longer and say it more finely.</source>
        <comment>setting.runs.help</comment>
        <translation>Mehr dauern länger und sagen es feiner.</translation>
    </message>
    <message>
        <source>16</source>
        <comment>choice.runs.16</comment>
        <translation>16</translation>
    </message>
    <message>
        <source>32</source>
        <comment>choice.runs.32</comment>
        <translation>32</translation>
    </message>
    <message>
        <source>64</source>
        <comment>choice.runs.64</comment>
        <translation>64</translation>
    </message>
    <message>
        <source>128</source>
        <comment>choice.runs.128</comment>
        <translation>128</translation>
    </message>
    <message>
        <source>256</source>
        <comment>choice.runs.256</comment>
        <translation>256</translation>
    </message>
    <message>
        <source>Seed</source>
        <comment>setting.seed</comment>
        <translation>Startzahl</translation>
    </message>
    <message>
        <source>The same seed draws the same chances again.</source>
        <comment>setting.seed.help</comment>
        <translation>Dieselbe Startzahl zieht dieselben Zufälle noch einmal.</translation>
    </message>
    <message>
        <source>Each behaves</source>
        <comment>behave</comment>
        <translation>Jeder verhält sich richtig</translation>
    </message>
    <message>
        <source>Behave on stage</source>
        <comment>count</comment>
        <translation>Richtig auf der Bühne</translation>
    </message>
    <message>
        <source>The blow breaks it already</source>
        <comment>blow_breaks</comment>
        <translation>Schon der Schlag bricht ihn</translation>
    </message>
    <message>
        <source>The scratch breaks it</source>
        <comment>scratch_breaks</comment>
        <translation>Der Kratzer bricht ihn</translation>
    </message>
    <message>
        <source>Scratch that bursts nine of ten</source>
        <comment>scratch_needed</comment>
        <translation>Kratzer, der neun von zehn bersten lässt</translation>
    </message>
    <message>
        <source>Blow that 19 of 20 bear</source>
        <comment>blow_borne</comment>
        <translation>Schlag, den 19 von 20 aushalten</translation>
    </message>
    <message>
        <source>Foot, outside</source>
        <comment>base_outside</comment>
        <translation>Boden außen</translation>
    </message>
    <message>
        <source>Foot, inside</source>
        <comment>base_inside</comment>
        <translation>Boden innen</translation>
    </message>
    <message>
        <source>Of {batch:.0f} on stage, {low:.0f} to {high:.0f} bear a blow of {blow:.1f} J and then burst at a scratch of {scratch:.0f} µm; {middle:.0f} is the middle.</source>
        <comment>show</comment>
        <translation>Von {batch:.0f} auf der Bühne halten {low:.0f} bis {high:.0f} einen Schlag von {blow:.1f} J aus und bersten dann bei einem Kratzer von {scratch:.0f} µm; die Mitte ist {middle:.0f}.</translation>
    </message>
    <message>
        <source>Of {batch:.0f} on stage, none is likely to bear a blow of {blow:.1f} J and then burst at a scratch of {scratch:.0f} µm.</source>
        <comment>none_behave</comment>
        <translation>Von {batch:.0f} auf der Bühne wird wohl keiner einen Schlag von {blow:.1f} J aushalten und dann bei einem Kratzer von {scratch:.0f} µm bersten.</translation>
    </message>
    <message>
        <source>For nine of ten to burst, scratch {scratch:.0f} µm deep; for all but one in twenty to bear the blow, keep it under {blow:.1f} J.</source>
        <comment>need</comment>
        <translation>Damit neun von zehn bersten, {scratch:.0f} µm tief ritzen; damit alle bis auf einen von zwanzig den Schlag aushalten, unter {blow:.1f} J bleiben.</translation>
    </message>
    <message>
        <source>No scratch up to half the foot bursts most of these: their foot is too thin, or they were cooled too slowly, to hold enough pull inside.</source>
        <comment>need_none</comment>
        <translation>Kein Kratzer bis zum halben Boden lässt die meisten bersten: Ihr Boden ist zu dünn, oder sie kühlten zu langsam, um innen genug Zug zu behalten.</translation>
    </message>
    <message>
        <source>Cooled in the oven they hold hardly any stress: they are ordinary flasks, and the scratch does nothing. That is what the oven is for.</source>
        <comment>calm</comment>
        <translation>Im Ofen gekühlt behalten sie kaum Spannung: Es sind gewöhnliche Kolben, und der Kratzer tut nichts. Dafür ist der Ofen da.</translation>
    </message>
    <message>
        <source>Bring {spare:.0f} for {batch:.0f} that behave, to be right nineteen times in twenty.</source>
        <comment>spare</comment>
        <translation>Für {batch:.0f} richtige {spare:.0f} mitbringen, dann stimmt es in neunzehn von zwanzig Fällen.</translation>
    </message>
    <message>
        <source>How many behave</source>
        <comment>counts</comment>
        <translation>Wie viele sich richtig verhalten</translation>
    </message>
    <message>
        <source>how many</source>
        <comment>number</comment>
        <translation>wie viele</translation>
    </message>
    <message>
        <source>odds</source>
        <comment>odds</comment>
        <translation>Wahrscheinlichkeit</translation>
    </message>
    <message>
        <source>odds of so many</source>
        <comment>flasks</comment>
        <translation>Wahrscheinlichkeit für so viele</translation>
    </message>
    <message>
        <source>Every flask leaves the pipe at one temperature, {hot:.0f} °C, round and centred; a seed, a stone or a foot that is out of the middle makes it weaker.</source>
        <comment>limit_maker</comment>
        <translation>Jeder Kolben kommt mit einer Temperatur, {hot:.0f} °C, von der Pfeife, rund und mittig; eine Blase, ein Steinchen oder ein Boden außer der Mitte macht ihn schwächer.</translation>
    </message>
    <message>
        <source>A scratch scatters by a factor of 1.3 about the depth that is meant (assumed), and is as long as it is deep several times over.</source>
        <comment>limit_scratch</comment>
        <translation>Ein Kratzer streut um den Faktor 1,3 um die beabsichtigte Tiefe (angenommen) und ist mehrfach so lang wie tief.</translation>
    </message>
    <message>
        <source>The blow is soft, in the middle of the foot: a hard, sharp one bruises the glass first. Outside are the flaws of used ware; inside nothing has touched the glass.</source>
        <comment>limit_blow</comment>
        <translation>Der Schlag ist weich, mitten auf den Boden: Ein harter, scharfer verletzt das Glas zuerst. Außen sind die Fehler benutzter Ware; innen hat nichts das Glas berührt.</translation>
    </message>
    <message>
        <source>A flask may burst on its own, at any time and in anybody's hand. Count only with the tests that are made behind a screen.</source>
        <comment>limit_wait</comment>
        <translation>Ein Kolben kann von selbst bersten, jederzeit und in jeder Hand. Zählen Sie nur auf Versuche hinter einem Schutzschirm.</translation>
    </message>
</context>
<context>
    <name>bench.colour</name>
    <message>
        <source>Which retardation, order and stress does a colour in my polariscope mean?</source>
        <comment>help</comment>
        <translation>Welchen Gangunterschied, welche Ordnung und welche Spannung bedeutet eine Farbe in meinem Polariskop?</translation>
    </message>
    <message>
        <source>Read by</source>
        <comment>setting.method</comment>
        <translation>Gelesen an</translation>
    </message>
    <message>
        <source>The colour itself, or by turning the analyser until the place is dark.</source>
        <comment>setting.method.help</comment>
        <translation>Die Farbe selbst, oder Drehen des Analysators, bis die Stelle dunkel ist.</translation>
    </message>
    <message>
        <source>Colour</source>
        <comment>choice.method.colour</comment>
        <translation>Farbe</translation>
    </message>
    <message>
        <source>Turning</source>
        <comment>choice.method.turning</comment>
        <translation>Drehen</translation>
    </message>
    <message>
        <source>Lamp</source>
        <comment>setting.lamp</comment>
        <translation>Lampe</translation>
    </message>
    <message>
        <source>The polariscope's.</source>
        <comment>setting.lamp.help</comment>
        <translation>Die des Polariskops.</translation>
    </message>
    <message>
        <source>Daylight</source>
        <comment>choice.lamp.daylight</comment>
        <translation>Tageslicht</translation>
    </message>
    <message>
        <source>Incandescent</source>
        <comment>choice.lamp.incandescent</comment>
        <translation>Glühlampe</translation>
    </message>
    <message>
        <source>White led</source>
        <comment>choice.lamp.white-led</comment>
        <translation>Weiße LED</translation>
    </message>
    <message>
        <source>Sodium</source>
        <comment>choice.lamp.sodium</comment>
        <translation>Natrium</translation>
    </message>
    <message>
        <source>Green</source>
        <comment>choice.lamp.green</comment>
        <translation>Grün</translation>
    </message>
    <message>
        <source>Seen without plate</source>
        <comment>setting.bare</comment>
        <translation>Ohne Platte gesehen</translation>
    </message>
    <message>
        <source>Whether it was looked at plainly (colour).</source>
        <comment>setting.bare.help</comment>
        <translation>Ob ohne Platte hingesehen wurde (Farbe).</translation>
    </message>
    <message>
        <source>Colour at</source>
        <comment>setting.seen_nm</comment>
        <translation>Farbe bei</translation>
    </message>
    <message>
        <source>Where on the chart, without the plate.</source>
        <comment>setting.seen_nm.help</comment>
        <translation>Wo auf der Farbtafel, ohne die Platte.</translation>
    </message>
    <message>
        <source>Seen with plate</source>
        <comment>setting.plate</comment>
        <translation>Mit Platte gesehen</translation>
    </message>
    <message>
        <source>Whether the tint plate was tried (colour).</source>
        <comment>setting.plate.help</comment>
        <translation>Ob die Lambda-Platte versucht wurde (Farbe).</translation>
    </message>
    <message>
        <source>Colour with plate at</source>
        <comment>setting.plate_seen_nm</comment>
        <translation>Farbe mit Platte bei</translation>
    </message>
    <message>
        <source>Where on the same chart its colour lies with the tint plate in.</source>
        <comment>setting.plate_seen_nm.help</comment>
        <translation>Wo auf derselben Tafel seine Farbe mit Lambda-Platte liegt.</translation>
    </message>
    <message>
        <source>The plate</source>
        <comment>setting.plate_way</comment>
        <translation>Die Platte</translation>
    </message>
    <message>
        <source>Turn the piece by a quarter: higher colours where it adds, lower where it takes.</source>
        <comment>setting.plate_way.help</comment>
        <translation>Stück um eine Viertelumdrehung drehen: höhere Farben, wo sie addiert, niedrigere, wo sie abzieht.</translation>
    </message>
    <message>
        <source>Adds</source>
        <comment>choice.plate_way.adds</comment>
        <translation>Addiert</translation>
    </message>
    <message>
        <source>Takes away</source>
        <comment>choice.plate_way.takes away</comment>
        <translation>Zieht ab</translation>
    </message>
    <message>
        <source>Unknown</source>
        <comment>choice.plate_way.unknown</comment>
        <translation>Unbekannt</translation>
    </message>
    <message>
        <source>Plate</source>
        <comment>setting.plate_nm</comment>
        <translation>Platte</translation>
    </message>
    <message>
        <source>Retardation of the tint plate.</source>
        <comment>setting.plate_nm.help</comment>
        <translation>Gangunterschied der Lambda-Platte.</translation>
    </message>
    <message>
        <source>Match within</source>
        <comment>setting.match</comment>
        <translation>Vergleich auf</translation>
    </message>
    <message>
        <source>CIEDE2000: 1 side by side, some 4 against a chart, 8 from memory.</source>
        <comment>setting.match.help</comment>
        <translation>CIEDE2000: 1 nebeneinander, etwa 4 gegen eine Tafel, 8 aus dem Gedächtnis.</translation>
    </message>
    <message>
        <source>Lower fringe</source>
        <comment>setting.whole_order</comment>
        <translation>Unterer Streifen</translation>
    </message>
    <message>
        <source>Whole order below the place (turning).</source>
        <comment>setting.whole_order.help</comment>
        <translation>Ganze Ordnung unter der Stelle (Drehen).</translation>
    </message>
    <message>
        <source>Lower fringe came</source>
        <comment>setting.lower_came</comment>
        <translation>Unterer Streifen kam</translation>
    </message>
    <message>
        <source>One way round (turning).</source>
        <comment>setting.lower_came.help</comment>
        <translation>In der einen Drehrichtung (Drehen).</translation>
    </message>
    <message>
        <source>By a turn of</source>
        <comment>setting.lower_deg</comment>
        <translation>Bei Drehung um</translation>
    </message>
    <message>
        <source>Analyser's turn (turning).</source>
        <comment>setting.lower_deg.help</comment>
        <translation>Drehung des Analysators (Drehen).</translation>
    </message>
    <message>
        <source>Higher fringe came</source>
        <comment>setting.higher_came</comment>
        <translation>Oberer Streifen kam</translation>
    </message>
    <message>
        <source>The other way round (turning).</source>
        <comment>setting.higher_came.help</comment>
        <translation>In der anderen Drehrichtung (Drehen).</translation>
    </message>
    <message>
        <source>By a turn of</source>
        <comment>setting.higher_deg</comment>
        <translation>Bei Drehung um</translation>
    </message>
    <message>
        <source>Analyser's turn (turning).</source>
        <comment>setting.higher_deg.help</comment>
        <translation>Drehung des Analysators (Drehen).</translation>
    </message>
    <message>
        <source>Turn within</source>
        <comment>setting.turn_tol_deg</comment>
        <translation>Drehung auf</translation>
    </message>
    <message>
        <source>How closely dark is found, to both sides.</source>
        <comment>setting.turn_tol_deg.help</comment>
        <translation>Wie genau das Dunkel gefunden wird, nach beiden Seiten.</translation>
    </message>
    <message>
        <source>Glass</source>
        <comment>setting.glass</comment>
        <translation>Glas</translation>
    </message>
    <message>
        <source>What the piece is made of.</source>
        <comment>setting.glass.help</comment>
        <translation>Woraus das Stück besteht.</translation>
    </message>
    <message>
        <source>Borosilicate</source>
        <comment>choice.glass.borosilicate</comment>
        <translation>Borosilikat</translation>
    </message>
    <message>
        <source>Fused silica</source>
        <comment>choice.glass.fused-silica</comment>
        <translation>Kieselglas</translation>
    </message>
    <message>
        <source>Lead crystal</source>
        <comment>choice.glass.lead-crystal</comment>
        <translation>Bleikristall</translation>
    </message>
    <message>
        <source>Soda lime</source>
        <comment>choice.glass.soda-lime</comment>
        <translation>Kalknatron</translation>
    </message>
    <message>
        <source>Path</source>
        <comment>setting.path_mm</comment>
        <translation>Lichtweg</translation>
    </message>
    <message>
        <source>Way of the light through the glass.</source>
        <comment>setting.path_mm.help</comment>
        <translation>Weg des Lichts durch das Glas.</translation>
    </message>
    <message>
        <source>Path within</source>
        <comment>setting.path_tol_pct</comment>
        <translation>Lichtweg auf</translation>
    </message>
    <message>
        <source>To both sides.</source>
        <comment>setting.path_tol_pct.help</comment>
        <translation>Nach beiden Seiten.</translation>
    </message>
    <message>
        <source>Retardation</source>
        <comment>retardation</comment>
        <translation>Gangunterschied</translation>
    </message>
    <message>
        <source>It is this one</source>
        <comment>odds_of_it</comment>
        <translation>Es ist dieser</translation>
    </message>
    <message>
        <source>Order</source>
        <comment>order</comment>
        <translation>Ordnung</translation>
    </message>
    <message>
        <source>Stress (difference)</source>
        <comment>stress</comment>
        <translation>Spannung (Differenz)</translation>
    </message>
    <message>
        <source>{colour}, order {order:.1f}: {low:.0f} to {high:.0f} nm, that is a stress of {weak:.2g} to {strong:.2g} MPa along {path:g} mm of glass.</source>
        <comment>one</comment>
        <translation>{colour}, Ordnung {order:.1f}: {low:.0f} bis {high:.0f} nm, das ist eine Spannung von {weak:.2g} bis {strong:.2g} MPa auf {path:g} mm Glas.</translation>
    </message>
    <message>
        <source>Two or more retardations show this colour: {list}. Look again with the tint plate, once where it adds and once where it takes away.</source>
        <comment>several</comment>
        <translation>Zwei oder mehr Gangunterschiede zeigen diese Farbe: {list}. Noch einmal mit der Lambda-Platte ansehen, einmal addierend und einmal abziehend.</translation>
    </message>
    <message>
        <source>The tint plate has told them apart.</source>
        <comment>told_apart</comment>
        <translation>Die Lambda-Platte hat sie getrennt.</translation>
    </message>
    <message>
        <source>Near black a colour says little: put the tint plate in, which turns a few nm into blue or yellow.</source>
        <comment>dark</comment>
        <translation>Nahe Schwarz sagt eine Farbe wenig: Lambda-Platte einsetzen, die wenige nm in Blau oder Gelb verwandelt.</translation>
    </message>
    <message>
        <source>{order:.2f} orders of {wave:.0f} nm: {low:.0f} to {high:.0f} nm, that is a stress of {weak:.2g} to {strong:.2g} MPa along {path:g} mm of glass.</source>
        <comment>turned</comment>
        <translation>{order:.2f} Ordnungen von {wave:.0f} nm: {low:.0f} bis {high:.0f} nm, das ist eine Spannung von {weak:.2g} bis {strong:.2g} MPa auf {path:g} mm Glas.</translation>
    </message>
    <message>
        <source>Which of both directions is pulled, a colour alone does not tell; the plate does: where it adds, its slow axis lies along the larger pull.</source>
        <comment>which</comment>
        <translation>Welche der beiden Richtungen gezogen ist, sagt die Farbe allein nicht; die Platte sagt es: Wo sie addiert, liegt ihre langsame Achse längs des größeren Zugs.</translation>
    </message>
    <message>
        <source>What shows this colour</source>
        <comment>candidates</comment>
        <translation>Was diese Farbe zeigt</translation>
    </message>
    <message>
        <source>from</source>
        <comment>low</comment>
        <translation>von</translation>
    </message>
    <message>
        <source>most likely</source>
        <comment>middle</comment>
        <translation>am wahrscheinlichsten</translation>
    </message>
    <message>
        <source>to</source>
        <comment>high</comment>
        <translation>bis</translation>
    </message>
    <message>
        <source>stress from</source>
        <comment>weak</comment>
        <translation>Spannung von</translation>
    </message>
    <message>
        <source>to</source>
        <comment>strong</comment>
        <translation>bis</translation>
    </message>
    <message>
        <source>odds</source>
        <comment>odds</comment>
        <translation>Wahrscheinlichkeit</translation>
    </message>
    <message>
        <source>plain</source>
        <comment>bare_word</comment>
        <translation>normal</translation>
    </message>
    <message>
        <source>plate adds</source>
        <comment>adds_word</comment>
        <translation>Platte addiert</translation>
    </message>
    <message>
        <source>plate takes away</source>
        <comment>takes_word</comment>
        <translation>Platte zieht ab</translation>
    </message>
    <message>
        <source>The chart: colours by retardation, without the plate</source>
        <comment>chart</comment>
        <translation>Die Tafel: Farben nach Gangunterschied, ohne die Platte</translation>
    </message>
    <message>
        <source>With the plate, where it adds</source>
        <comment>chart_adds</comment>
        <translation>Mit der Platte, wo sie addiert</translation>
    </message>
    <message>
        <source>With the plate, where it takes away</source>
        <comment>chart_takes</comment>
        <translation>Mit der Platte, wo sie abzieht</translation>
    </message>
    <message>
        <source>The stress is the difference of the two principal stresses, averaged along the light, and as if it were the same all the way.</source>
        <comment>limit_difference</comment>
        <translation>Die Spannung ist die Differenz der beiden Hauptspannungen, über den Lichtweg gemittelt, als wäre sie überall gleich.</translation>
    </message>
    <message>
        <source>The stress lies at 45 degrees to the polarizers: elsewhere the colour is the same but darker, and along them there is none.</source>
        <comment>limit_axis</comment>
        <translation>Die Spannung liegt unter 45 Grad zu den Polarisatoren: Anderswo ist die Farbe gleich, aber dunkler, und längs von ihnen ist keine da.</translation>
    </message>
    <message>
        <source>The glass's own dispersion of birefringence and the projector's or camera's colours are left out; beyond the third order colours are too pale to trust.</source>
        <comment>limit_dispersion</comment>
        <translation>Die Dispersion der Doppelbrechung des Glases und die Farben von Projektor oder Kamera sind weggelassen; jenseits der dritten Ordnung sind Farben zu blass, um ihnen zu trauen.</translation>
    </message>
    <message>
        <source>How closely eyes match a colour is a guess that you state; the ranges follow it, and the coefficient of the glass within 3 %.</source>
        <comment>limit_match</comment>
        <translation>Wie genau Augen eine Farbe vergleichen, ist eine Schätzung von Ihnen; die Bereiche folgen ihr und dem Koeffizienten des Glases auf 3 %.</translation>
    </message>
    <message>
        <source>The polarizers must lie along and across the stress, with quarter-wave plates for that colour, or one quarter-wave plate along the polarizer (Sénarmont).</source>
        <comment>limit_turning</comment>
        <translation>Die Polarisatoren müssen längs und quer zur Spannung liegen, mit Viertelwellenplatten für diese Farbe oder einer Viertelwellenplatte längs des Polarisators (Sénarmont).</translation>
    </message>
</context>
<context>
    <name>bench.matching</name>
    <message>
        <source>Which cooling, flame or thickness does my real piece have, by three readings of it?</source>
        <comment>help</comment>
        <translation>Welche Kühlung, Flamme oder Dicke hat mein wirkliches Stück, nach drei Messwerten?</translation>
    </message>
    <message>
        <source>Unknown</source>
        <comment>setting.unknown</comment>
        <translation>Unbekannt</translation>
    </message>
    <message>
        <source>jets: cooling of a toughened plate; thickness: of such a plate; flame: a burner's.</source>
        <comment>setting.unknown.help</comment>
        <translation>Düsen: Kühlung einer vorgespannten Platte; Dicke: einer solchen; Flamme: die eines Brenners.</translation>
    </message>
    <message>
        <source>Jets</source>
        <comment>choice.unknown.jets</comment>
        <translation>Düsen</translation>
    </message>
    <message>
        <source>Thickness</source>
        <comment>choice.unknown.thickness</comment>
        <translation>Dicke</translation>
    </message>
    <message>
        <source>Flame</source>
        <comment>choice.unknown.flame</comment>
        <translation>Flamme</translation>
    </message>
    <message>
        <source>Glass</source>
        <comment>setting.glass</comment>
        <translation>Glas</translation>
    </message>
    <message>
        <source>What the piece is made of.</source>
        <comment>setting.glass.help</comment>
        <translation>Woraus das Stück besteht.</translation>
    </message>
    <message>
        <source>Borosilicate</source>
        <comment>choice.glass.borosilicate</comment>
        <translation>Borosilikat</translation>
    </message>
    <message>
        <source>Fused silica</source>
        <comment>choice.glass.fused-silica</comment>
        <translation>Kieselglas</translation>
    </message>
    <message>
        <source>Lead crystal</source>
        <comment>choice.glass.lead-crystal</comment>
        <translation>Bleikristall</translation>
    </message>
    <message>
        <source>Soda lime</source>
        <comment>choice.glass.soda-lime</comment>
        <translation>Kalknatron</translation>
    </message>
    <message>
        <source>Thickness</source>
        <comment>setting.thickness_mm</comment>
        <translation>Dicke</translation>
    </message>
    <message>
        <source>Of the plate, or the bottle's wall.</source>
        <comment>setting.thickness_mm.help</comment>
        <translation>Der Platte oder der Flaschenwand.</translation>
    </message>
    <message>
        <source>Start</source>
        <comment>setting.start_C</comment>
        <translation>Start</translation>
    </message>
    <message>
        <source>Heat when the jets start (jets, thickness).</source>
        <comment>setting.start_C.help</comment>
        <translation>Temperatur, wenn die Düsen beginnen (Düsen, Dicke).</translation>
    </message>
    <message>
        <source>Jets</source>
        <comment>setting.jet_W_m2K</comment>
        <translation>Düsen</translation>
    </message>
    <message>
        <source>Known cooling (thickness).</source>
        <comment>setting.jet_W_m2K.help</comment>
        <translation>Bekannte Kühlung (Dicke).</translation>
    </message>
    <message>
        <source>Diameter</source>
        <comment>setting.outer_diameter_mm</comment>
        <translation>Durchmesser</translation>
    </message>
    <message>
        <source>Of the bottle over the burner (flame).</source>
        <comment>setting.outer_diameter_mm.help</comment>
        <translation>Der Flasche über dem Brenner (Flamme).</translation>
    </message>
    <message>
        <source>Flame width</source>
        <comment>setting.ring_width_mm</comment>
        <translation>Flammenbreite</translation>
    </message>
    <message>
        <source>At half its heat (flame).</source>
        <comment>setting.ring_width_mm.help</comment>
        <translation>Bei halber Wärme (Flamme).</translation>
    </message>
    <message>
        <source>First reading</source>
        <comment>setting.first_reading</comment>
        <translation>Erster Messwert</translation>
    </message>
    <message>
        <source>Squeeze at the surface, MPa; or °C at first time.</source>
        <comment>setting.first_reading.help</comment>
        <translation>Druck an der Oberfläche, MPa; oder °C zur ersten Zeit.</translation>
    </message>
    <message>
        <source>Second reading</source>
        <comment>setting.second_reading</comment>
        <translation>Zweiter Messwert</translation>
    </message>
    <message>
        <source>Pull in the middle, MPa; or °C at second time.</source>
        <comment>setting.second_reading.help</comment>
        <translation>Zug in der Mitte, MPa; oder °C zur zweiten Zeit.</translation>
    </message>
    <message>
        <source>Third reading</source>
        <comment>setting.third_reading</comment>
        <translation>Dritter Messwert</translation>
    </message>
    <message>
        <source>Edge-on at the skin in 15 mm of glass, nm; for thickness, depth without stress in µm; or °C at the third time.</source>
        <comment>setting.third_reading.help</comment>
        <translation>Durch die Kante an der Oberfläche in 15 mm Glas, nm; für die Dicke die spannungsfreie Tiefe in µm; oder °C zur dritten Zeit.</translation>
    </message>
    <message>
        <source>First time</source>
        <comment>setting.first_s</comment>
        <translation>Erste Zeit</translation>
    </message>
    <message>
        <source>After the flame's start (flame).</source>
        <comment>setting.first_s.help</comment>
        <translation>Nach dem Beginn der Flamme (Flamme).</translation>
    </message>
    <message>
        <source>Second time</source>
        <comment>setting.second_s</comment>
        <translation>Zweite Zeit</translation>
    </message>
    <message>
        <source>The same.</source>
        <comment>setting.second_s.help</comment>
        <translation>Ebenso.</translation>
    </message>
    <message>
        <source>Third time</source>
        <comment>setting.third_s</comment>
        <translation>Dritte Zeit</translation>
    </message>
    <message>
        <source>The same.</source>
        <comment>setting.third_s.help</comment>
        <translation>Ebenso.</translation>
    </message>
    <message>
        <source>Readings within</source>
        <comment>setting.reading_pct</comment>
        <translation>Messwerte auf</translation>
    </message>
    <message>
        <source>Two of three readings are this close to the truth.</source>
        <comment>setting.reading_pct.help</comment>
        <translation>Zwei von drei Messwerten liegen so nahe an der Wahrheit.</translation>
    </message>
    <message>
        <source>Instrument within</source>
        <comment>setting.bias_pct</comment>
        <translation>Messgerät auf</translation>
    </message>
    <message>
        <source>What all readings are off together.</source>
        <comment>setting.bias_pct.help</comment>
        <translation>Was alle Messwerte gemeinsam abweichen.</translation>
    </message>
    <message>
        <source>Model within</source>
        <comment>setting.model_pct</comment>
        <translation>Modell auf</translation>
    </message>
    <message>
        <source>How far the model itself may be off.</source>
        <comment>setting.model_pct.help</comment>
        <translation>Wie weit das Modell selbst abweichen kann.</translation>
    </message>
    <message>
        <source>Cooling coefficient of the jets</source>
        <comment>jets</comment>
        <translation>Kühlkoeffizient der Düsen</translation>
    </message>
    <message>
        <source>Thickness</source>
        <comment>thickness</comment>
        <translation>Dicke</translation>
    </message>
    <message>
        <source>Heat of the flame</source>
        <comment>flame</comment>
        <translation>Wärme der Flamme</translation>
    </message>
    <message>
        <source>If all is as stated, three readings fit that badly or worse {chance:.0f} times in 100.</source>
        <comment>chance</comment>
        <translation>Stimmt alle Angabe, passen drei Messwerte in {chance:.0f} von 100 Fällen so schlecht oder schlechter.</translation>
    </message>
    <message>
        <source>{name}: {value:.3g} {unit}, from {low:.3g} to {high:.3g} with 95 %.</source>
        <comment>found</comment>
        <translation>{name}: {value:.3g} {unit}, von {low:.3g} bis {high:.3g} mit 95 %.</translation>
    </message>
    <message>
        <source>{name}: {value:.3g} {unit}, but anything from {low:.3g} to {high:.3g} suits. Read again, or more closely.</source>
        <comment>wide</comment>
        <translation>{name}: {value:.3g} {unit}, aber alles von {low:.3g} bis {high:.3g} passt. Noch einmal oder genauer messen.</translation>
    </message>
    <message>
        <source>These readings do not tell: everything from {low:.3g} to {high:.3g} {unit} suits them.</source>
        <comment>nothing</comment>
        <translation>Diese Messwerte sagen es nicht: Alles von {low:.3g} bis {high:.3g} {unit} passt zu ihnen.</translation>
    </message>
    <message>
        <source>The readings contradict each other, or the model; at best {value:.3g} {unit}, perhaps {low:.3g} to {high:.3g}. Check the readings, and what is stated beside them.</source>
        <comment>inconsistent</comment>
        <translation>Die Messwerte widersprechen einander oder dem Modell; am besten {value:.3g} {unit}, vielleicht {low:.3g} bis {high:.3g}. Prüfen Sie die Messwerte und was daneben angegeben ist.</translation>
    </message>
    <message>
        <source>Several values suit, between {low:.3g} and {high:.3g} {unit}. Read something else as well.</source>
        <comment>several</comment>
        <translation>Mehrere Werte passen, zwischen {low:.3g} und {high:.3g} {unit}. Messen Sie auch etwas anderes.</translation>
    </message>
    <message>
        <source>At most {high:.3g} {unit}; how little these readings do not tell.</source>
        <comment>open_low</comment>
        <translation>Höchstens {high:.3g} {unit}; wie wenig, sagen diese Messwerte nicht.</translation>
    </message>
    <message>
        <source>At least {low:.3g} {unit}; how much these readings do not tell.</source>
        <comment>open_high</comment>
        <translation>Mindestens {low:.3g} {unit}; wie viel, sagen diese Messwerte nicht.</translation>
    </message>
    <message>
        <source>It may be kept as a device of this site.</source>
        <comment>usable</comment>
        <translation>Es kann als Gerät dieses Hauses behalten werden.</translation>
    </message>
    <message>
        <source>Do not keep it as a device: it is not known well enough.</source>
        <comment>not_usable</comment>
        <translation>Nicht als Gerät behalten: Es ist nicht genau genug bekannt.</translation>
    </message>
    <message>
        <source>Readings beside the fitted model</source>
        <comment>compared</comment>
        <translation>Messwerte neben dem angepassten Modell</translation>
    </message>
    <message>
        <source>reading</source>
        <comment>reading</comment>
        <translation>Messwert</translation>
    </message>
    <message>
        <source>read</source>
        <comment>read</comment>
        <translation>gemessen</translation>
    </message>
    <message>
        <source>model</source>
        <comment>fitted</comment>
        <translation>Modell</translation>
    </message>
    <message>
        <source>apart by (of its doubt)</source>
        <comment>pull</comment>
        <translation>Abstand (in Unsicherheiten)</translation>
    </message>
    <message>
        <source>squeeze at the surface, MPa</source>
        <comment>surface_MPa</comment>
        <translation>Druck an der Oberfläche, MPa</translation>
    </message>
    <message>
        <source>pull in the middle, MPa</source>
        <comment>centre_MPa</comment>
        <translation>Zug in der Mitte, MPa</translation>
    </message>
    <message>
        <source>edge-on at the skin, nm</source>
        <comment>edge_nm</comment>
        <translation>Kante, an der Oberfläche, nm</translation>
    </message>
    <message>
        <source>depth without stress, µm</source>
        <comment>neutral_um</comment>
        <translation>spannungsfreie Tiefe, µm</translation>
    </message>
    <message>
        <source>°C at the first time</source>
        <comment>first_C</comment>
        <translation>°C zur ersten Zeit</translation>
    </message>
    <message>
        <source>°C at the second time</source>
        <comment>second_C</comment>
        <translation>°C zur zweiten Zeit</translation>
    </message>
    <message>
        <source>°C at the third time</source>
        <comment>third_C</comment>
        <translation>°C zur dritten Zeit</translation>
    </message>
    <message>
        <source>unknown</source>
        <comment>unknown</comment>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>reading</source>
        <comment>modelled</comment>
        <translation>Messwert</translation>
    </message>
    <message>
        <source>Least squares for one unknown; everything else is taken as stated. The interval holds the truth in 95 of 100 cases if the uncertainties are as stated.</source>
        <comment>limit_fit</comment>
        <translation>Kleinste Quadrate für eine Unbekannte; alles andere gilt wie angegeben. Das Intervall enthält die Wahrheit in 95 von 100 Fällen, wenn die Unsicherheiten so sind wie angegeben.</translation>
    </message>
    <message>
        <source>The plate is wide and cooled alike on both faces.</source>
        <comment>limit_plate</comment>
        <translation>Die Platte ist weit und auf beiden Flächen gleich gekühlt.</translation>
    </message>
    <message>
        <source>Temperatures are those of the outside in the middle of the ring, of a bottle that turns, while the flame burns.</source>
        <comment>limit_burner</comment>
        <translation>Temperaturen gelten außen in der Ringmitte einer drehenden Flasche, während die Flamme brennt.</translation>
    </message>
</context>
</TS>
