<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es" sourcelanguage="en">
<context>
    <name>language</name>
    <message>
        <source>English</source>
        <comment>name</comment>
        <translation>Español</translation>
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
        <translation>Matraz</translation>
    </message>
    <message>
        <source>Fresh from the pipe, {hot:.0f} °C. A first answer for the cold foot: outside squeezed with {squeeze:.0f} MPa, inside pulled with {pull:.0f} MPa.</source>
        <comment>text.fresh</comment>
        <translation>Recién salido de la caña, {hot:.0f} °C. Primera estimación para el fondo frío: fuera {squeeze:.0f} MPa de compresión, dentro {pull:.0f} MPa de tracción.</translation>
    </message>
    <message>
        <source>Fresh from the pipe, {hot:.0f} °C, and into the oven. A first answer: after {hours:.0f} hours hardly {stress:.1f} MPa will be left.</source>
        <comment>text.fresh_oven</comment>
        <translation>Recién salido de la caña, {hot:.0f} °C, y al horno. Primera estimación: tras {hours:.0f} horas quedarán apenas {stress:.1f} MPa.</translation>
    </message>
    <message>
        <source>The outside of the foot is stiff already, its inside is still soft at {inside:.0f} °C and gives way.</source>
        <comment>text.soft</comment>
        <translation>El fondo ya es rígido por fuera; por dentro, a {inside:.0f} °C, sigue blando y cede.</translation>
    </message>
    <message>
        <source>The oven keeps inside and outside alike: {outside:.0f} and {inside:.0f} °C. So both stiffen together.</source>
        <comment>text.even</comment>
        <translation>El horno mantiene casi iguales el exterior y el interior: {outside:.0f} y {inside:.0f} °C. Así se vuelven rígidos a la vez.</translation>
    </message>
    <message>
        <source>All of it is stiff now. The inside is still hotter and shrinks more: it squeezes the outside with {squeeze:.0f} MPa.</source>
        <comment>text.shrinking</comment>
        <translation>Ahora todo es rígido. El interior está aún más caliente y encoge más: comprime el exterior con {squeeze:.0f} MPa.</translation>
    </message>
    <message>
        <source>Cold, and this stays: the outside of the foot is squeezed with {squeeze:.0f} MPa, the inside pulled with {pull:.0f} MPa.</source>
        <comment>text.locked</comment>
        <translation>Frío, y esto queda: el fondo está por fuera a {squeeze:.0f} MPa de compresión y por dentro a {pull:.0f} MPa de tracción.</translation>
    </message>
    <message>
        <source>Cold and calm after {hours:.0f} hours in the oven: less than {stress:.1f} MPa is left, and the picture is dark.</source>
        <comment>text.calm</comment>
        <translation>Frío y en calma tras {hours:.0f} horas en el horno: quedan menos de {stress:.1f} MPa y la imagen está oscura.</translation>
    </message>
    <message>
        <source>The flask is still hot. The test comes once it is cold.</source>
        <comment>text.wait</comment>
        <translation>El matraz aún está caliente. La prueba llega cuando esté frío.</translation>
    </message>
    <message>
        <source>A blow of {energy:.1f} J from outside, and it holds: half of such flasks bear {limit:.1f} J. The squeezed skin keeps flaws shut.</source>
        <comment>text.blow_held</comment>
        <translation>Un golpe de {energy:.1f} J desde fuera, y aguanta: la mitad de estos matraces soporta {limit:.1f} J. La piel comprimida mantiene cerrados los defectos.</translation>
    </message>
    <message>
        <source>A blow of {energy:.1f} J from outside, and it holds. Half of such flasks bear {limit:.1f} J: no squeezed skin helps this one.</source>
        <comment>text.blow_held_calm</comment>
        <translation>Un golpe de {energy:.1f} J desde fuera, y aguanta. La mitad de estos matraces soporta {limit:.1f} J: a este no lo ayuda ninguna piel comprimida.</translation>
    </message>
    <message>
        <source>A blow of {energy:.1f} J was too much: half of such flasks bear {limit:.1f} J.</source>
        <comment>text.blow_broke</comment>
        <translation>Un golpe de {energy:.1f} J fue demasiado: la mitad de estos matraces soporta {limit:.1f} J.</translation>
    </message>
    <message>
        <source>A scratch of {depth:.0f} µm inside, and it holds. It takes {limit:.0f} µm for the pull to open it.</source>
        <comment>text.scratch_held</comment>
        <translation>Un arañazo interior de {depth:.0f} µm, y aguanta. Hacen falta {limit:.0f} µm para que la tracción lo abra.</translation>
    </message>
    <message>
        <source>A scratch of {depth:.0f} µm inside, and nothing happens: in there nothing pulls. It takes a blow of {load:.2g} J from outside to open it.</source>
        <comment>text.scratch_held_calm</comment>
        <translation>Un arañazo interior de {depth:.0f} µm, y no pasa nada: ahí dentro nada tira. Para abrirlo hace falta un golpe exterior de {load:.2g} J.</translation>
    </message>
    <message>
        <source>A scratch of {depth:.0f} µm inside, and it holds: the pull in there is too weak to open any. It takes a blow of {load:.2g} J from outside.</source>
        <comment>text.scratch_held_weak</comment>
        <translation>Un arañazo interior de {depth:.0f} µm, y aguanta: la tracción es demasiado débil para abrir alguno. Hace falta un golpe exterior de {load:.2g} J.</translation>
    </message>
    <message>
        <source>No scratch, and nothing happens.</source>
        <comment>text.no_scratch</comment>
        <translation>Sin arañazo, y no pasa nada.</translation>
    </message>
    <message>
        <source>A scratch of {depth:.0f} µm inside was enough: the pull opens it from {limit:.0f} µm on, and the stored {energy:.2f} J shatter the flask.</source>
        <comment>text.scratch_shattered</comment>
        <translation>Bastó un arañazo interior de {depth:.0f} µm: la tracción lo abre desde {limit:.0f} µm, y los {energy:.2f} J almacenados hacen añicos el matraz.</translation>
    </message>
    <message>
        <source>A scratch of {depth:.0f} µm inside was enough: from {limit:.0f} µm on the pull opens it. The thin glass stores too little to shatter.</source>
        <comment>text.scratch_cracked</comment>
        <translation>Bastó un arañazo interior de {depth:.0f} µm: desde {limit:.0f} µm la tracción lo abre. El vidrio fino almacena demasiado poco para estallar.</translation>
    </message>
    <message>
        <source>around the flask</source>
        <comment>text.stress</comment>
        <translation>alrededor del matraz</translation>
    </message>
    <message>
        <source>below the outside</source>
        <comment>text.depth</comment>
        <translation>bajo la cara exterior</translation>
    </message>
    <message>
        <source>in the foot</source>
        <comment>text.through_foot</comment>
        <translation>en el fondo</translation>
    </message>
    <message>
        <source>first answer</source>
        <comment>text.through_first</comment>
        <translation>primera estimación</translation>
    </message>
    <message>
        <source>stress</source>
        <comment>text.pull</comment>
        <translation>tensión</translation>
    </message>
    <message>
        <source>Hit it outside</source>
        <comment>action.hit</comment>
        <translation>Golpear por fuera</translation>
    </message>
    <message>
        <source>Scratch it inside</source>
        <comment>action.scratch</comment>
        <translation>Arañar por dentro</translation>
    </message>
    <message>
        <source>A whole one again</source>
        <comment>action.whole</comment>
        <translation>Otra vez entero</translation>
    </message>
    <message>
        <source>Glass</source>
        <comment>setting.glass</comment>
        <translation>Vidrio</translation>
    </message>
    <message>
        <source>What it is made of.</source>
        <comment>setting.glass.help</comment>
        <translation>De qué está hecho.</translation>
    </message>
    <message>
        <source>Borosilicate</source>
        <comment>choice.glass.borosilicate</comment>
        <translation>Borosilicato</translation>
    </message>
    <message>
        <source>Fused silica</source>
        <comment>choice.glass.fused-silica</comment>
        <translation>Sílice fundida</translation>
    </message>
    <message>
        <source>Lead crystal</source>
        <comment>choice.glass.lead-crystal</comment>
        <translation>Cristal de plomo</translation>
    </message>
    <message>
        <source>Soda lime</source>
        <comment>choice.glass.soda-lime</comment>
        <translation>Sodocálcico</translation>
    </message>
    <message>
        <source>Diameter</source>
        <comment>setting.outer_diameter_mm</comment>
        <translation>Diámetro</translation>
    </message>
    <message>
        <source>Outer diameter of the flask.</source>
        <comment>setting.outer_diameter_mm.help</comment>
        <translation>Diámetro exterior del matraz.</translation>
    </message>
    <message>
        <source>Length</source>
        <comment>setting.length_mm</comment>
        <translation>Longitud</translation>
    </message>
    <message>
        <source>From the foot to the mouth.</source>
        <comment>setting.length_mm.help</comment>
        <translation>Del fondo a la boca.</translation>
    </message>
    <message>
        <source>Foot</source>
        <comment>setting.base_mm</comment>
        <translation>Fondo</translation>
    </message>
    <message>
        <source>Thickness in the middle of the foot.</source>
        <comment>setting.base_mm.help</comment>
        <translation>Espesor en el centro del fondo.</translation>
    </message>
    <message>
        <source>Wall</source>
        <comment>setting.wall_mm</comment>
        <translation>Pared</translation>
    </message>
    <message>
        <source>Thickness of the wall.</source>
        <comment>setting.wall_mm.help</comment>
        <translation>Espesor de la pared.</translation>
    </message>
    <message>
        <source>Cooled</source>
        <comment>setting.way</comment>
        <translation>Enfriado</translation>
    </message>
    <message>
        <source>In the open, or by an oven programme.</source>
        <comment>setting.way.help</comment>
        <translation>Al aire o con un programa de horno.</translation>
    </message>
    <message>
        <source>Air</source>
        <comment>choice.way.air</comment>
        <translation>Aire</translation>
    </message>
    <message>
        <source>Oven</source>
        <comment>choice.way.oven</comment>
        <translation>Horno</translation>
    </message>
    <message>
        <source>Test</source>
        <comment>setting.test</comment>
        <translation>Prueba</translation>
    </message>
    <message>
        <source>What is done to the cold flask.</source>
        <comment>setting.test.help</comment>
        <translation>Qué se le hace al matraz frío.</translation>
    </message>
    <message>
        <source>None</source>
        <comment>choice.test.none</comment>
        <translation>Ninguna</translation>
    </message>
    <message>
        <source>Blow</source>
        <comment>choice.test.blow</comment>
        <translation>Golpe</translation>
    </message>
    <message>
        <source>Scratch</source>
        <comment>choice.test.scratch</comment>
        <translation>Arañazo</translation>
    </message>
    <message>
        <source>Blow</source>
        <comment>setting.blow_J</comment>
        <translation>Golpe</translation>
    </message>
    <message>
        <source>Energy of a soft blow on the foot, from outside.</source>
        <comment>setting.blow_J.help</comment>
        <translation>Energía de un golpe suave en el fondo, desde fuera.</translation>
    </message>
    <message>
        <source>Scratch</source>
        <comment>setting.scratch_um</comment>
        <translation>Arañazo</translation>
    </message>
    <message>
        <source>Depth of a long scratch inside the foot.</source>
        <comment>setting.scratch_um.help</comment>
        <translation>Profundidad de un arañazo largo dentro del fondo.</translation>
    </message>
    <message>
        <source>Foot, outside</source>
        <comment>reading.base_outside_MPa</comment>
        <translation>Fondo, exterior</translation>
    </message>
    <message>
        <source>Of the cold flask; until then foreseen.</source>
        <comment>reading.base_outside_MPa.help</comment>
        <translation>Del matraz frío; hasta entonces, previsto.</translation>
    </message>
    <message>
        <source>Foot, inside</source>
        <comment>reading.base_inside_MPa</comment>
        <translation>Fondo, interior</translation>
    </message>
    <message>
        <source>Of the cold flask; until then foreseen.</source>
        <comment>reading.base_inside_MPa.help</comment>
        <translation>Del matraz frío; hasta entonces, previsto.</translation>
    </message>
    <message>
        <source>Wall, outside</source>
        <comment>reading.wall_outside_MPa</comment>
        <translation>Pared, exterior</translation>
    </message>
    <message>
        <source>Of the cold flask; until then foreseen.</source>
        <comment>reading.wall_outside_MPa.help</comment>
        <translation>Del matraz frío; hasta entonces, previsto.</translation>
    </message>
    <message>
        <source>Wall, inside</source>
        <comment>reading.wall_inside_MPa</comment>
        <translation>Pared, interior</translation>
    </message>
    <message>
        <source>Of the cold flask; until then foreseen.</source>
        <comment>reading.wall_inside_MPa.help</comment>
        <translation>Del matraz frío; hasta entonces, previsto.</translation>
    </message>
    <message>
        <source>Largest pull inside</source>
        <comment>reading.inside_peak_MPa</comment>
        <translation>Mayor tracción interior</translation>
    </message>
    <message>
        <source>Of the cold flask, anywhere.</source>
        <comment>reading.inside_peak_MPa.help</comment>
        <translation>Del matraz frío, en cualquier lugar.</translation>
    </message>
    <message>
        <source>Answer</source>
        <comment>reading.answer</comment>
        <translation>Respuesta</translation>
    </message>
    <message>
        <source>first: plates twice as thick; full: the whole flask.</source>
        <comment>reading.answer.help</comment>
        <translation>primera estimación: placas del doble de espesor; completo: el matraz.</translation>
    </message>
    <message>
        <source>first</source>
        <comment>value.answer.first</comment>
        <translation>primera estimación</translation>
    </message>
    <message>
        <source>full</source>
        <comment>value.answer.full</comment>
        <translation>cálculo completo</translation>
    </message>
    <message>
        <source>Progress</source>
        <comment>reading.progress_pct</comment>
        <translation>Avance</translation>
    </message>
    <message>
        <source>Of the full answer.</source>
        <comment>reading.progress_pct.help</comment>
        <translation>De la respuesta completa.</translation>
    </message>
    <message>
        <source>Scratch that breaks it</source>
        <comment>reading.scratch_to_break_um</comment>
        <translation>Arañazo que lo rompe</translation>
    </message>
    <message>
        <source>Inside; none: no depth does.</source>
        <comment>reading.scratch_to_break_um.help</comment>
        <translation>Interior; ninguno: no basta ninguna profundidad.</translation>
    </message>
    <message>
        <source>Blow that breaks it</source>
        <comment>reading.blow_to_break_J</comment>
        <translation>Golpe que lo rompe</translation>
    </message>
    <message>
        <source>Outside; half of such flasks break.</source>
        <comment>reading.blow_to_break_J.help</comment>
        <translation>Exterior; se rompe la mitad de estos matraces.</translation>
    </message>
    <message>
        <source>Odds of a break</source>
        <comment>reading.break_probability</comment>
        <translation>Probabilidad de rotura</translation>
    </message>
    <message>
        <source>Of the chosen test.</source>
        <comment>reading.break_probability.help</comment>
        <translation>En la prueba elegida.</translation>
    </message>
    <message>
        <source>Breaks</source>
        <comment>reading.breaks</comment>
        <translation>Se rompe</translation>
    </message>
    <message>
        <source>The verdict for the test as stated.</source>
        <comment>reading.breaks.help</comment>
        <translation>El veredicto para la prueba indicada.</translation>
    </message>
    <message>
        <source>Cracks run by themselves</source>
        <comment>reading.runs_by_itself</comment>
        <translation>Las grietas corren solas</translation>
    </message>
    <message>
        <source>Once they reach the pull.</source>
        <comment>reading.runs_by_itself.help</comment>
        <translation>En cuanto alcanzan la tracción.</translation>
    </message>
    <message>
        <source>Dice</source>
        <comment>reading.pieces</comment>
        <translation>Dados</translation>
    </message>
    <message>
        <source>That the stored energy makes of it; 1: none.</source>
        <comment>reading.pieces.help</comment>
        <translation>Los que hace de él la energía almacenada; 1: ninguno.</translation>
    </message>
    <message>
        <source>Stored energy</source>
        <comment>reading.stored_energy_J</comment>
        <translation>Energía almacenada</translation>
    </message>
    <message>
        <source>Net force</source>
        <comment>reading.net_force_N</comment>
        <translation>Fuerza neta</translation>
    </message>
    <message>
        <source>Across the middle of the wall: pull less squeeze.</source>
        <comment>reading.net_force_N.help</comment>
        <translation>A través del centro de la pared: tracción menos compresión.</translation>
    </message>
    <message>
        <source>Cooled for</source>
        <comment>reading.hours</comment>
        <translation>Tiempo enfriando</translation>
    </message>
    <message>
        <source>Retardation peak</source>
        <comment>reading.retardation_peak_nm</comment>
        <translation>Retardo máximo</translation>
    </message>
    <message>
        <source>Largest in the picture.</source>
        <comment>reading.retardation_peak_nm.help</comment>
        <translation>El mayor de la imagen.</translation>
    </message>
</context>
<context>
    <name>scene.cooling</name>
    <message>
        <source>Slow or sudden cooling</source>
        <comment>title</comment>
        <translation>Enfriado lento o brusco</translation>
    </message>
    <message>
        <source>At {inside:.0f} °C the glass still gives way: stress runs out of it as fast as it comes, and the picture stays dark.</source>
        <comment>text.soft</comment>
        <translation>A {inside:.0f} °C el vidrio aún cede: la tensión se relaja tan rápido como aparece, y la imagen sigue oscura.</translation>
    </message>
    <message>
        <source>At {inside:.0f} °C the glass still gives way. What little stress shows comes of uneven cooling, and would run out again if the cooling stopped.</source>
        <comment>text.soft_seen</comment>
        <translation>A {inside:.0f} °C el vidrio aún cede. La poca tensión que se ve viene del enfriamiento desigual y se relajaría si este cesara.</translation>
    </message>
    <message>
        <source>The oven holds {hold:.0f} °C. What stress there was runs out of the glass: {minutes:.0f} minutes to go.</source>
        <comment>text.holding</comment>
        <translation>El horno mantiene {hold:.0f} °C. La tensión que había se relaja: faltan {minutes:.0f} minutos.</translation>
    </message>
    <message>
        <source>The oven holds {hold:.0f} °C, too cold to let stress go: the strain point is {strain:.0f} °C. Hold at {anneal:.0f} °C instead.</source>
        <comment>text.holding_cold</comment>
        <translation>El horno mantiene {hold:.0f} °C, demasiado frío para relajar tensiones: el punto de deformación es {strain:.0f} °C. Mejor mantener {anneal:.0f} °C.</translation>
    </message>
    <message>
        <source>Now the glass stiffens. The inside is {hotter:.1f} °C hotter and has more shrinking left to do: this is where stress is born.</source>
        <comment>text.birth</comment>
        <translation>Ahora el vidrio se vuelve rígido. El interior está {hotter:.1f} °C más caliente y le queda más por encoger: aquí nace la tensión.</translation>
    </message>
    <message>
        <source>Stiff through and through. The inside shrinks after the outside: it is pulled with {pull:.1f} MPa, the outside squeezed with {squeeze:.1f} MPa.</source>
        <comment>text.catching_up</comment>
        <translation>Rígido por completo. El interior encoge después del exterior: dentro {pull:.1f} MPa de tracción, fuera {squeeze:.1f} MPa de compresión.</translation>
    </message>
    <message>
        <source>The outside is cooler and wants to be smaller than the inside lets it: for now its skin is pulled with {pull:.1f} MPa.</source>
        <comment>text.skin_pulled</comment>
        <translation>El exterior está más frío y quiere ser más pequeño de lo que el interior le deja: por ahora su piel está a {pull:.1f} MPa de tracción.</translation>
    </message>
    <message>
        <source>Stiff, but the inside is only {hotter:.1f} °C hotter than the outside: hardly any stress is born, and the picture stays dark.</source>
        <comment>text.even</comment>
        <translation>Rígido, pero el interior está solo {hotter:.1f} °C más caliente que el exterior: apenas nace tensión, y la imagen sigue oscura.</translation>
    </message>
    <message>
        <source>The thin part cools first and shrinks, the thick one holds it back: the thin part is pulled with {thin:.0f} MPa on average, the thick one squeezed with {thick:.0f}.</source>
        <comment>text.joined_first</comment>
        <translation>La parte fina se enfría primero y encoge, la gruesa la retiene: de media, {thin:.0f} MPa de tracción en la fina y {thick:.0f} de compresión en la gruesa.</translation>
    </message>
    <message>
        <source>The thin part went stiff first. The thick part still shrinks and is held back: pulled with {thick:.0f} MPa on average, the thin part squeezed with {thin:.0f}.</source>
        <comment>text.joined</comment>
        <translation>La parte fina se puso rígida primero. La gruesa aún encoge y se ve retenida: de media, {thick:.0f} MPa de tracción, y {thin:.0f} de compresión en la fina.</translation>
    </message>
    <message>
        <source>Light through the face meets squeeze, pull and squeeze again. They cancel out, so even a strained plate stays dark face-on.</source>
        <comment>text.face_dark</comment>
        <translation>La luz que atraviesa la cara encuentra compresión, tracción y otra vez compresión. Se anulan: vista de cara, hasta una placa tensa queda oscura.</translation>
    </message>
    <message>
        <source>Joined parts load each other, and face-on that would show. Here it is only {nm:.0f} nm of retardation: the picture stays dark.</source>
        <comment>text.face_joined_faint</comment>
        <translation>Las partes unidas se cargan entre sí, y de cara se vería. Aquí son solo {nm:.0f} nm de retardo: la imagen sigue oscura.</translation>
    </message>
    <message>
        <source>Along the joint one part is pulled, the other squeezed, with equal forces. Seen face-on that does not cancel out: {nm:.0f} nm in both.</source>
        <comment>text.face_joined</comment>
        <translation>A lo largo de la unión, una parte está a tracción y la otra a compresión, con fuerzas iguales. Visto de cara no se anula: {nm:.0f} nm en ambas.</translation>
    </message>
    <message>
        <source>Cold, but it hardly came through whole: cooling pulled the skin with {pull:.0f} MPa, and handled glass may crack from {strength:.0f} MPa.</source>
        <comment>text.may_crack</comment>
        <translation>Frío, pero llegó entero por poco: al enfriarse, la piel sufrió {pull:.0f} MPa de tracción, y un vidrio usado puede agrietarse desde {strength:.0f} MPa.</translation>
    </message>
    <message>
        <source>Lenses may keep {limit:.0f} (ISO 10110-2); this piece has {nm:.1f} nm on each centimetre. Good enough, after {hours:.1f} hours.</source>
        <comment>text.good_optics</comment>
        <translation>Las lentes pueden conservar {limit:.0f} (ISO 10110-2); esta pieza tiene {nm:.1f} nm por centímetro. Suficiente, tras {hours:.1f} horas.</translation>
    </message>
    <message>
        <source>Magnifying glasses may keep {limit:.0f} (ISO 10110-2); this piece has {nm:.1f} nm on each centimetre. Good enough, after {hours:.1f} hours.</source>
        <comment>text.good_magnifier</comment>
        <translation>Las lupas pueden conservar {limit:.0f} (ISO 10110-2); esta pieza tiene {nm:.1f} nm por centímetro. Suficiente, tras {hours:.1f} horas.</translation>
    </message>
    <message>
        <source>Bottles may keep {limit:.0f} (temper number 4 by ASTM C148); this piece has {nm:.1f} nm on each centimetre. Good enough, after {hours:.1f} hours.</source>
        <comment>text.good_ware</comment>
        <translation>Las botellas pueden conservar {limit:.0f} (grado de recocido 4, ASTM C148); esta pieza tiene {nm:.1f} nm por centímetro. Suficiente, tras {hours:.1f} horas.</translation>
    </message>
    <message>
        <source>{nm:.0f} nm stay on each centimetre. Lenses may keep {limit:.0f} (ISO 10110-2): too much. Hold at {hold:.0f} °C, then {slow:.3g} °C an hour: {hours:.1f} hours in all would do.</source>
        <comment>text.bad_optics</comment>
        <translation>Quedan {nm:.0f} nm por centímetro. Las lentes pueden conservar {limit:.0f} (ISO 10110-2): demasiado. Mantener {hold:.0f} °C y luego {slow:.3g} °C por hora: bastarían {hours:.1f} horas en total.</translation>
    </message>
    <message>
        <source>{nm:.0f} nm stay on each centimetre. Magnifying glasses may keep {limit:.0f} (ISO 10110-2): too much. Hold at {hold:.0f} °C, then {slow:.3g} °C an hour: {hours:.1f} hours in all would do.</source>
        <comment>text.bad_magnifier</comment>
        <translation>Quedan {nm:.0f} nm por centímetro. Las lupas pueden conservar {limit:.0f} (ISO 10110-2): demasiado. Mantener {hold:.0f} °C y luego {slow:.3g} °C por hora: bastarían {hours:.1f} horas en total.</translation>
    </message>
    <message>
        <source>{nm:.0f} nm stay on each centimetre. Bottles may keep {limit:.0f} (temper number 4 by ASTM C148): too much. Hold at {hold:.0f} °C, then {slow:.3g} °C an hour: {hours:.1f} hours in all would do.</source>
        <comment>text.bad_ware</comment>
        <translation>Quedan {nm:.0f} nm por centímetro. Las botellas pueden conservar {limit:.0f} (grado de recocido 4, ASTM C148): demasiado. Mantener {hold:.0f} °C y luego {slow:.3g} °C por hora: bastarían {hours:.1f} horas en total.</translation>
    </message>
    <message>
        <source>{nm:.0f} nm stay on each centimetre. Lenses may keep {limit:.0f} (ISO 10110-2): too much, and no programme that was tried would do.</source>
        <comment>text.hopeless_optics</comment>
        <translation>Quedan {nm:.0f} nm por centímetro. Las lentes pueden conservar {limit:.0f} (ISO 10110-2): demasiado, y ninguno de los programas probados bastaría.</translation>
    </message>
    <message>
        <source>{nm:.0f} nm stay on each centimetre. Magnifying glasses may keep {limit:.0f} (ISO 10110-2): too much, and no programme that was tried would do.</source>
        <comment>text.hopeless_magnifier</comment>
        <translation>Quedan {nm:.0f} nm por centímetro. Las lupas pueden conservar {limit:.0f} (ISO 10110-2): demasiado, y ninguno de los programas probados bastaría.</translation>
    </message>
    <message>
        <source>{nm:.0f} nm stay on each centimetre. Bottles may keep {limit:.0f} (temper number 4 by ASTM C148): too much, and no programme that was tried would do.</source>
        <comment>text.hopeless_ware</comment>
        <translation>Quedan {nm:.0f} nm por centímetro. Las botellas pueden conservar {limit:.0f} (grado de recocido 4, ASTM C148): demasiado, y ninguno de los programas probados bastaría.</translation>
    </message>
    <message>
        <source>time</source>
        <comment>text.time_h</comment>
        <translation>tiempo</translation>
    </message>
    <message>
        <source>temperature</source>
        <comment>text.temperature</comment>
        <translation>temperatura</translation>
    </message>
    <message>
        <source>stress</source>
        <comment>text.stress</comment>
        <translation>tensión</translation>
    </message>
    <message>
        <source>outside</source>
        <comment>text.outside</comment>
        <translation>exterior</translation>
    </message>
    <message>
        <source>inside</source>
        <comment>text.inside</comment>
        <translation>interior</translation>
    </message>
    <message>
        <source>inside the second part</source>
        <comment>text.second_inside</comment>
        <translation>interior de la segunda parte</translation>
    </message>
    <message>
        <source>oven</source>
        <comment>text.oven</comment>
        <translation>horno</translation>
    </message>
    <message>
        <source>surface</source>
        <comment>text.surface</comment>
        <translation>superficie</translation>
    </message>
    <message>
        <source>centre</source>
        <comment>text.centre</comment>
        <translation>centro</translation>
    </message>
    <message>
        <source>second part's surface</source>
        <comment>text.second_surface</comment>
        <translation>superficie de la segunda parte</translation>
    </message>
    <message>
        <source>second part's centre</source>
        <comment>text.second_centre</comment>
        <translation>centro de la segunda parte</translation>
    </message>
    <message>
        <source>annealing point</source>
        <comment>text.anneal</comment>
        <translation>punto de recocido</translation>
    </message>
    <message>
        <source>strain point</source>
        <comment>text.strain</comment>
        <translation>punto de deformación</translation>
    </message>
    <message>
        <source>pull allowed at the end</source>
        <comment>text.allowed_pull</comment>
        <translation>tracción admitida al final</translation>
    </message>
    <message>
        <source>squeeze allowed at the end</source>
        <comment>text.allowed_squeeze</comment>
        <translation>compresión admitida al final</translation>
    </message>
    <message>
        <source>in the plane of the plate</source>
        <comment>text.in_plane</comment>
        <translation>en el plano de la placa</translation>
    </message>
    <message>
        <source>along the joint</source>
        <comment>text.along_joint</comment>
        <translation>a lo largo de la unión</translation>
    </message>
    <message>
        <source>Into the air</source>
        <comment>action.take_out</comment>
        <translation>Al aire</translation>
    </message>
    <message>
        <source>Into the oven</source>
        <comment>action.put_in</comment>
        <translation>Al horno</translation>
    </message>
    <message>
        <source>Take the proposal</source>
        <comment>action.take_proposal</comment>
        <translation>Tomar la propuesta</translation>
    </message>
    <message>
        <source>Glass</source>
        <comment>setting.glass</comment>
        <translation>Vidrio</translation>
    </message>
    <message>
        <source>What it is made of.</source>
        <comment>setting.glass.help</comment>
        <translation>De qué está hecho.</translation>
    </message>
    <message>
        <source>Borosilicate</source>
        <comment>choice.glass.borosilicate</comment>
        <translation>Borosilicato</translation>
    </message>
    <message>
        <source>Fused silica</source>
        <comment>choice.glass.fused-silica</comment>
        <translation>Sílice fundida</translation>
    </message>
    <message>
        <source>Lead crystal</source>
        <comment>choice.glass.lead-crystal</comment>
        <translation>Cristal de plomo</translation>
    </message>
    <message>
        <source>Soda lime</source>
        <comment>choice.glass.soda-lime</comment>
        <translation>Sodocálcico</translation>
    </message>
    <message>
        <source>Thickness</source>
        <comment>setting.thickness_mm</comment>
        <translation>Espesor</translation>
    </message>
    <message>
        <source>Of the plate.</source>
        <comment>setting.thickness_mm.help</comment>
        <translation>De la placa.</translation>
    </message>
    <message>
        <source>Second thickness</source>
        <comment>setting.second_thickness_mm</comment>
        <translation>Segundo espesor</translation>
    </message>
    <message>
        <source>Of a part beside it; 0: none.</source>
        <comment>setting.second_thickness_mm.help</comment>
        <translation>De una parte al lado; 0: ninguna.</translation>
    </message>
    <message>
        <source>One piece</source>
        <comment>setting.joined</comment>
        <translation>Una pieza</translation>
    </message>
    <message>
        <source>Whether thick and thin are one stepped piece.</source>
        <comment>setting.joined.help</comment>
        <translation>Si grueso y fino son una sola pieza escalonada.</translation>
    </message>
    <message>
        <source>Way</source>
        <comment>setting.way</comment>
        <translation>Modo</translation>
    </message>
    <message>
        <source>Out into the air, or into the oven.</source>
        <comment>setting.way.help</comment>
        <translation>Fuera al aire o dentro del horno.</translation>
    </message>
    <message>
        <source>Air</source>
        <comment>choice.way.air</comment>
        <translation>Aire</translation>
    </message>
    <message>
        <source>Oven</source>
        <comment>choice.way.oven</comment>
        <translation>Horno</translation>
    </message>
    <message>
        <source>Programme</source>
        <comment>setting.programme</comment>
        <translation>Programa</translation>
    </message>
    <message>
        <source>Your own below, or the shortest that is good enough.</source>
        <comment>setting.programme.help</comment>
        <translation>El propio, abajo, o el más corto que sea suficiente.</translation>
    </message>
    <message>
        <source>Own</source>
        <comment>choice.programme.own</comment>
        <translation>Propio</translation>
    </message>
    <message>
        <source>Proposed</source>
        <comment>choice.programme.proposed</comment>
        <translation>Propuesto</translation>
    </message>
    <message>
        <source>Hold at</source>
        <comment>setting.hold_C</comment>
        <translation>Mantener a</translation>
    </message>
    <message>
        <source>Where the oven holds.</source>
        <comment>setting.hold_C.help</comment>
        <translation>Dónde se mantiene el horno.</translation>
    </message>
    <message>
        <source>Hold for</source>
        <comment>setting.hold_min</comment>
        <translation>Mantener durante</translation>
    </message>
    <message>
        <source>How long it holds.</source>
        <comment>setting.hold_min.help</comment>
        <translation>Cuánto tiempo se mantiene.</translation>
    </message>
    <message>
        <source>Slow</source>
        <comment>setting.slow_C_per_h</comment>
        <translation>Lento</translation>
    </message>
    <message>
        <source>Cooling through the range where stress is born.</source>
        <comment>setting.slow_C_per_h.help</comment>
        <translation>Enfriamiento por el intervalo en que nace la tensión.</translation>
    </message>
    <message>
        <source>Slow down to</source>
        <comment>setting.slow_to_C</comment>
        <translation>Lento hasta</translation>
    </message>
    <message>
        <source>Where slow becomes fast; 0: 140 °C below the strain point.</source>
        <comment>setting.slow_to_C.help</comment>
        <translation>Donde lento pasa a rápido; 0: 140 °C bajo el punto de deformación.</translation>
    </message>
    <message>
        <source>Fast</source>
        <comment>setting.fast_C_per_h</comment>
        <translation>Rápido</translation>
    </message>
    <message>
        <source>Cooling from there to room temperature.</source>
        <comment>setting.fast_C_per_h.help</comment>
        <translation>Enfriamiento desde ahí hasta temperatura ambiente.</translation>
    </message>
    <message>
        <source>Good enough for</source>
        <comment>setting.limit</comment>
        <translation>Suficiente para</translation>
    </message>
    <message>
        <source>Lenses (ISO 10110-2: 10 nm/cm), magnifiers (20 nm/cm), ware (ASTM C148: number 4).</source>
        <comment>setting.limit.help</comment>
        <translation>Lentes (ISO 10110-2: 10 nm/cm), lupas (20 nm/cm), menaje (ASTM C148: grado 4).</translation>
    </message>
    <message>
        <source>Optics</source>
        <comment>choice.limit.optics</comment>
        <translation>Óptica</translation>
    </message>
    <message>
        <source>Magnifier</source>
        <comment>choice.limit.magnifier</comment>
        <translation>Lupa</translation>
    </message>
    <message>
        <source>Ware</source>
        <comment>choice.limit.ware</comment>
        <translation>Menaje</translation>
    </message>
    <message>
        <source>Seen</source>
        <comment>setting.look</comment>
        <translation>Vista</translation>
    </message>
    <message>
        <source>Which way the light goes.</source>
        <comment>setting.look.help</comment>
        <translation>Por dónde pasa la luz.</translation>
    </message>
    <message>
        <source>Edge on</source>
        <comment>choice.look.edge-on</comment>
        <translation>De canto</translation>
    </message>
    <message>
        <source>Face on</source>
        <comment>choice.look.face-on</comment>
        <translation>De cara</translation>
    </message>
    <message>
        <source>Light's path</source>
        <comment>setting.path_mm</comment>
        <translation>Camino de la luz</translation>
    </message>
    <message>
        <source>Width of glass that light passes edge-on.</source>
        <comment>setting.path_mm.help</comment>
        <translation>Anchura de vidrio que la luz atraviesa de canto.</translation>
    </message>
    <message>
        <source>Chart</source>
        <comment>setting.chart</comment>
        <translation>Gráfica</translation>
    </message>
    <message>
        <source>What is drawn over time.</source>
        <comment>setting.chart.help</comment>
        <translation>Qué se dibuja frente al tiempo.</translation>
    </message>
    <message>
        <source>Temperature</source>
        <comment>choice.chart.temperature</comment>
        <translation>Temperatura</translation>
    </message>
    <message>
        <source>Stress</source>
        <comment>choice.chart.stress</comment>
        <translation>Tensión</translation>
    </message>
    <message>
        <source>Surface</source>
        <comment>reading.surface_MPa</comment>
        <translation>Superficie</translation>
    </message>
    <message>
        <source>Of the plate; of a stepped piece along its joint.</source>
        <comment>reading.surface_MPa.help</comment>
        <translation>De la placa; en una pieza escalonada, a lo largo de su unión.</translation>
    </message>
    <message>
        <source>Centre</source>
        <comment>reading.centre_MPa</comment>
        <translation>Centro</translation>
    </message>
    <message>
        <source>Of the plate; of a stepped piece along its joint.</source>
        <comment>reading.centre_MPa.help</comment>
        <translation>De la placa; en una pieza escalonada, a lo largo de su unión.</translation>
    </message>
    <message>
        <source>Second part's surface</source>
        <comment>reading.second_surface_MPa</comment>
        <translation>Superficie de la segunda parte</translation>
    </message>
    <message>
        <source>Second part's centre</source>
        <comment>reading.second_centre_MPa</comment>
        <translation>Centro de la segunda parte</translation>
    </message>
    <message>
        <source>Load from the other part</source>
        <comment>reading.load_MPa</comment>
        <translation>Carga de la otra parte</translation>
    </message>
    <message>
        <source>Mean through the first part.</source>
        <comment>reading.load_MPa.help</comment>
        <translation>Media en la primera parte.</translation>
    </message>
    <message>
        <source>Retardation</source>
        <comment>reading.retardation_nm_per_cm</comment>
        <translation>Retardo</translation>
    </message>
    <message>
        <source>Largest for each cm of path.</source>
        <comment>reading.retardation_nm_per_cm.help</comment>
        <translation>El mayor por cada cm de camino.</translation>
    </message>
    <message>
        <source>Allowed</source>
        <comment>reading.limit_nm_per_cm</comment>
        <translation>Admitido</translation>
    </message>
    <message>
        <source>By the limit that is set.</source>
        <comment>reading.limit_nm_per_cm.help</comment>
        <translation>Según el límite elegido.</translation>
    </message>
    <message>
        <source>Real temper number</source>
        <comment>reading.temper_number</comment>
        <translation>Grado de recocido real</translation>
    </message>
    <message>
        <source>ASTM C148: strain discs in 4.06 mm.</source>
        <comment>reading.temper_number.help</comment>
        <translation>ASTM C148: discos patrón en 4,06 mm.</translation>
    </message>
    <message>
        <source>Surface's pull on the way</source>
        <comment>reading.peak_tension_MPa</comment>
        <translation>Tracción de la superficie en el camino</translation>
    </message>
    <message>
        <source>Largest over the run.</source>
        <comment>reading.peak_tension_MPa.help</comment>
        <translation>La mayor del proceso.</translation>
    </message>
    <message>
        <source>Outside</source>
        <comment>reading.outside_C</comment>
        <translation>Exterior</translation>
    </message>
    <message>
        <source>Inside</source>
        <comment>reading.inside_C</comment>
        <translation>Interior</translation>
    </message>
    <message>
        <source>Cold after</source>
        <comment>reading.hours</comment>
        <translation>Frío tras</translation>
    </message>
    <message>
        <source>None before it is cold.</source>
        <comment>reading.hours.help</comment>
        <translation>Nada antes de que esté frío.</translation>
    </message>
    <message>
        <source>Good enough</source>
        <comment>reading.acceptable</comment>
        <translation>Suficiente</translation>
    </message>
    <message>
        <source>The verdict; none before it is cold.</source>
        <comment>reading.acceptable.help</comment>
        <translation>El veredicto; ninguno antes de que esté frío.</translation>
    </message>
    <message>
        <source>Shortest that passes</source>
        <comment>reading.proposed_hours</comment>
        <translation>El más corto que vale</translation>
    </message>
    <message>
        <source>Stated once the piece is cold.</source>
        <comment>reading.proposed_hours.help</comment>
        <translation>Se indica cuando la pieza está fría.</translation>
    </message>
    <message>
        <source>Proposed: hold at</source>
        <comment>reading.proposed_hold_C</comment>
        <translation>Propuesta: mantener a</translation>
    </message>
    <message>
        <source>Proposed: hold for</source>
        <comment>reading.proposed_hold_min</comment>
        <translation>Propuesta: mantener durante</translation>
    </message>
    <message>
        <source>Proposed: slow</source>
        <comment>reading.proposed_slow_C_per_h</comment>
        <translation>Propuesta: lento</translation>
    </message>
    <message>
        <source>Proposed: slow down to</source>
        <comment>reading.proposed_slow_to_C</comment>
        <translation>Propuesta: lento hasta</translation>
    </message>
    <message>
        <source>Proposed: fast</source>
        <comment>reading.proposed_fast_C_per_h</comment>
        <translation>Propuesta: rápido</translation>
    </message>
</context>
<context>
    <name>scene.dish</name>
    <message>
        <source>Moulded dish</source>
        <comment>title</comment>
        <translation>Bandeja moldeada</translation>
    </message>
    <message>
        <source>The mould is closed and empty: nothing to be seen yet.</source>
        <comment>text.closed</comment>
        <translation>El molde está cerrado y vacío: aún no hay nada que ver.</translation>
    </message>
    <message>
        <source>Melt streams in and has filled {filled:.0f} % of the mould. Between the cold walls its long molecules are drawn out, and what touches a wall freezes like that.</source>
        <comment>text.filling</comment>
        <translation>El plástico fundido entra y ha llenado el {filled:.0f} % del molde. Entre las paredes frías sus largas moléculas se estiran, y lo que toca una pared se congela así.</translation>
    </message>
    <message>
        <source>The mould is full. The thin bottom freezes first; the thick rim and ribs are still hot, and will pull at it when they shrink.</source>
        <comment>text.cooling</comment>
        <translation>El molde está lleno. El fondo fino se congela primero; el borde grueso y los nervios siguen calientes y tirarán de él al encoger.</translation>
    </message>
    <message>
        <source>Cold, and full of colour up to {nm:.0f} nm, {orders:.1f} orders: {flow:.0f} % of it are molecules that froze drawn out, {stress:.0f} % stress from thick parts that froze last.</source>
        <comment>text.cold</comment>
        <translation>Fría y llena de color hasta {nm:.0f} nm, {orders:.1f} órdenes: el {flow:.0f} % son moléculas congeladas estiradas, el {stress:.0f} % tensión de partes gruesas que se congelaron al final.</translation>
    </message>
    <message>
        <source>At {warm:.0f} °C, below its glass transition at {tg:.0f} °C, the plastic is hard: of its stress {heat:.0f} % is left, of its molecules' stretch {stretch:.0f} %.</source>
        <comment>text.below</comment>
        <translation>A {warm:.0f} °C, por debajo de su transición vítrea a {tg:.0f} °C, el plástico es duro: queda el {heat:.0f} % de la tensión y el {stretch:.0f} % del estiramiento molecular.</translation>
    </message>
    <message>
        <source>Above its glass transition at {tg:.0f} °C the plastic gives way: of its stress {heat:.0f} % is left, and of its molecules' stretch, which takes longer, {stretch:.0f} %.</source>
        <comment>text.above</comment>
        <translation>Por encima de su transición vítrea a {tg:.0f} °C el plástico cede: queda el {heat:.0f} % de la tensión y, del estiramiento molecular, que tarda más, el {stretch:.0f} %.</translation>
    </message>
    <message>
        <source>The colours are gone: warmed for long enough, the molecules have coiled up and the stress has flowed away, as in glass that is annealed.</source>
        <comment>text.gone</comment>
        <translation>Los colores han desaparecido: con calor suficiente las moléculas se han ovillado y la tensión se ha relajado, como en un vidrio que se recuece.</translation>
    </message>
    <message>
        <source>place along the dish</source>
        <comment>text.place</comment>
        <translation>lugar a lo largo de la bandeja</translation>
    </message>
    <message>
        <source>retardation</source>
        <comment>text.colour</comment>
        <translation>retardo</translation>
    </message>
    <message>
        <source>molecules</source>
        <comment>text.stretch</comment>
        <translation>moléculas</translation>
    </message>
    <message>
        <source>stress</source>
        <comment>text.heat</comment>
        <translation>tensión</translation>
    </message>
    <message>
        <source>both together</source>
        <comment>text.both</comment>
        <translation>ambas juntas</translation>
    </message>
    <message>
        <source>Warm it</source>
        <comment>action.warm_up</comment>
        <translation>Calentarla</translation>
    </message>
    <message>
        <source>Plastic</source>
        <comment>setting.plastic</comment>
        <translation>Plástico</translation>
    </message>
    <message>
        <source>What it is moulded from.</source>
        <comment>setting.plastic.help</comment>
        <translation>De qué se moldea.</translation>
    </message>
    <message>
        <source>Polystyrene</source>
        <comment>choice.plastic.polystyrene</comment>
        <translation>Poliestireno</translation>
    </message>
    <message>
        <source>Thickness</source>
        <comment>setting.thickness_mm</comment>
        <translation>Espesor</translation>
    </message>
    <message>
        <source>Of the bottom.</source>
        <comment>setting.thickness_mm.help</comment>
        <translation>Del fondo.</translation>
    </message>
    <message>
        <source>Rim and ribs</source>
        <comment>setting.rib_mm</comment>
        <translation>Borde y nervios</translation>
    </message>
    <message>
        <source>Thickness of the rim and ribs.</source>
        <comment>setting.rib_mm.help</comment>
        <translation>Espesor del borde y los nervios.</translation>
    </message>
    <message>
        <source>Gate</source>
        <comment>setting.gate</comment>
        <translation>Entrada</translation>
    </message>
    <message>
        <source>Where the melt comes in: lower left corner, left side or middle.</source>
        <comment>setting.gate.help</comment>
        <translation>Por dónde entra el fundido: esquina inferior izquierda, lado izquierdo o centro.</translation>
    </message>
    <message>
        <source>Corner</source>
        <comment>choice.gate.corner</comment>
        <translation>Esquina</translation>
    </message>
    <message>
        <source>Side</source>
        <comment>choice.gate.side</comment>
        <translation>Lado</translation>
    </message>
    <message>
        <source>Middle</source>
        <comment>choice.gate.middle</comment>
        <translation>Centro</translation>
    </message>
    <message>
        <source>Melt</source>
        <comment>setting.melt_C</comment>
        <translation>Fundido</translation>
    </message>
    <message>
        <source>Temperature of the melt.</source>
        <comment>setting.melt_C.help</comment>
        <translation>Temperatura del fundido.</translation>
    </message>
    <message>
        <source>Mould</source>
        <comment>setting.mould_C</comment>
        <translation>Molde</translation>
    </message>
    <message>
        <source>Temperature of the mould's walls.</source>
        <comment>setting.mould_C.help</comment>
        <translation>Temperatura de las paredes del molde.</translation>
    </message>
    <message>
        <source>Filled in</source>
        <comment>setting.fill_s</comment>
        <translation>Llenado en</translation>
    </message>
    <message>
        <source>Time to fill the mould.</source>
        <comment>setting.fill_s.help</comment>
        <translation>Tiempo para llenar el molde.</translation>
    </message>
    <message>
        <source>Warm the cold dish to</source>
        <comment>setting.warm_C</comment>
        <translation>Calentar la bandeja fría a</translation>
    </message>
    <message>
        <source>Once the dish is cold it is put into warm air of this temperature.</source>
        <comment>setting.warm_C.help</comment>
        <translation>Una vez fría, la bandeja se pone en aire a esta temperatura.</translation>
    </message>
    <message>
        <source>Warm for</source>
        <comment>setting.warm_min</comment>
        <translation>Calentar durante</translation>
    </message>
    <message>
        <source>How long it lies in the warm air.</source>
        <comment>setting.warm_min.help</comment>
        <translation>Cuánto tiempo está en el aire caliente.</translation>
    </message>
    <message>
        <source>Cast instead in</source>
        <comment>setting.as_glass</comment>
        <translation>Colada en su lugar en</translation>
    </message>
    <message>
        <source>For the comparison with glass.</source>
        <comment>setting.as_glass.help</comment>
        <translation>Para comparar con el vidrio.</translation>
    </message>
    <message>
        <source>Borosilicate</source>
        <comment>choice.as_glass.borosilicate</comment>
        <translation>Borosilicato</translation>
    </message>
    <message>
        <source>Fused silica</source>
        <comment>choice.as_glass.fused-silica</comment>
        <translation>Sílice fundida</translation>
    </message>
    <message>
        <source>Lead crystal</source>
        <comment>choice.as_glass.lead-crystal</comment>
        <translation>Cristal de plomo</translation>
    </message>
    <message>
        <source>Soda lime</source>
        <comment>choice.as_glass.soda-lime</comment>
        <translation>Sodocálcico</translation>
    </message>
    <message>
        <source>Retardation peak</source>
        <comment>reading.retardation_peak_nm</comment>
        <translation>Retardo máximo</translation>
    </message>
    <message>
        <source>Of the cold dish; until then now.</source>
        <comment>reading.retardation_peak_nm.help</comment>
        <translation>De la bandeja fría; hasta entonces, el actual.</translation>
    </message>
    <message>
        <source>Retardation, 95 %</source>
        <comment>reading.retardation_p95_nm</comment>
        <translation>Retardo, 95 %</translation>
    </message>
    <message>
        <source>Now: 95 % of the dish have less.</source>
        <comment>reading.retardation_p95_nm.help</comment>
        <translation>Ahora: el 95 % de la bandeja tiene menos.</translation>
    </message>
    <message>
        <source>Orders of colour</source>
        <comment>reading.orders</comment>
        <translation>Órdenes de color</translation>
    </message>
    <message>
        <source>Peak over 551 nm, the first violet.</source>
        <comment>reading.orders.help</comment>
        <translation>Máximo entre 551 nm, el primer violeta.</translation>
    </message>
    <message>
        <source>Drawn-out molecules</source>
        <comment>reading.flow_share_pct</comment>
        <translation>Moléculas estiradas</translation>
    </message>
    <message>
        <source>Their share of the colours.</source>
        <comment>reading.flow_share_pct.help</comment>
        <translation>Su parte en los colores.</translation>
    </message>
    <message>
        <source>By molecules</source>
        <comment>reading.flow_peak_nm</comment>
        <translation>Por las moléculas</translation>
    </message>
    <message>
        <source>Largest, now.</source>
        <comment>reading.flow_peak_nm.help</comment>
        <translation>El mayor, ahora.</translation>
    </message>
    <message>
        <source>By stress</source>
        <comment>reading.stress_peak_nm</comment>
        <translation>Por la tensión</translation>
    </message>
    <message>
        <source>Largest, now.</source>
        <comment>reading.stress_peak_nm.help</comment>
        <translation>El mayor, ahora.</translation>
    </message>
    <message>
        <source>Colours left</source>
        <comment>reading.colour_left_pct</comment>
        <translation>Color restante</translation>
    </message>
    <message>
        <source>Of the cold dish's mean, after warming.</source>
        <comment>reading.colour_left_pct.help</comment>
        <translation>De la media de la bandeja fría, tras calentarla.</translation>
    </message>
    <message>
        <source>Stress left</source>
        <comment>reading.stress_left_pct</comment>
        <translation>Tensión restante</translation>
    </message>
    <message>
        <source>After warming.</source>
        <comment>reading.stress_left_pct.help</comment>
        <translation>Tras calentarla.</translation>
    </message>
    <message>
        <source>Molecules' stretch left</source>
        <comment>reading.stretch_left_pct</comment>
        <translation>Estiramiento molecular restante</translation>
    </message>
    <message>
        <source>After warming.</source>
        <comment>reading.stretch_left_pct.help</comment>
        <translation>Tras calentarla.</translation>
    </message>
    <message>
        <source>Largest pull</source>
        <comment>reading.tension_MPa</comment>
        <translation>Mayor tracción</translation>
    </message>
    <message>
        <source>Inside, of the frozen dish.</source>
        <comment>reading.tension_MPa.help</comment>
        <translation>Dentro, en la bandeja congelada.</translation>
    </message>
    <message>
        <source>Largest squeeze</source>
        <comment>reading.compression_MPa</comment>
        <translation>Mayor compresión</translation>
    </message>
    <message>
        <source>Near the skin, of the frozen dish.</source>
        <comment>reading.compression_MPa.help</comment>
        <translation>Cerca de la piel, en la bandeja congelada.</translation>
    </message>
    <message>
        <source>Cut adds up to</source>
        <comment>reading.net_force_N</comment>
        <translation>El corte suma</translation>
    </message>
    <message>
        <source>Stress in an upright cut; nobody holds it.</source>
        <comment>reading.net_force_N.help</comment>
        <translation>Tensión en un corte vertical; nadie la sujeta.</translation>
    </message>
    <message>
        <source>Fails first</source>
        <comment>reading.weak_corner</comment>
        <translation>Falla primero</translation>
    </message>
    <message>
        <source>The corner that is pulled hardest.</source>
        <comment>reading.weak_corner.help</comment>
        <translation>La esquina con mayor tracción.</translation>
    </message>
    <message>
        <source>lower left</source>
        <comment>value.weak_corner.lower left</comment>
        <translation>abajo a la izquierda</translation>
    </message>
    <message>
        <source>lower right</source>
        <comment>value.weak_corner.lower right</comment>
        <translation>abajo a la derecha</translation>
    </message>
    <message>
        <source>upper left</source>
        <comment>value.weak_corner.upper left</comment>
        <translation>arriba a la izquierda</translation>
    </message>
    <message>
        <source>upper right</source>
        <comment>value.weak_corner.upper right</comment>
        <translation>arriba a la derecha</translation>
    </message>
    <message>
        <source>hardly before another</source>
        <comment>value.weak_corner.hardly before another</comment>
        <translation>casi a la vez que otra</translation>
    </message>
    <message>
        <source>Pull there</source>
        <comment>reading.weak_corner_MPa</comment>
        <translation>Tracción allí</translation>
    </message>
    <message>
        <source>Filled</source>
        <comment>reading.filled_pct</comment>
        <translation>Lleno</translation>
    </message>
    <message>
        <source>Pressure at the gate</source>
        <comment>reading.pressure_MPa</comment>
        <translation>Presión en la entrada</translation>
    </message>
    <message>
        <source>Largest.</source>
        <comment>reading.pressure_MPa.help</comment>
        <translation>El mayor.</translation>
    </message>
    <message>
        <source>In glass it survives</source>
        <comment>reading.as_glass_survives</comment>
        <translation>En vidrio sobrevive</translation>
    </message>
    <message>
        <source>Cast, and cooled in the open air.</source>
        <comment>reading.as_glass_survives.help</comment>
        <translation>Colada y enfriada al aire.</translation>
    </message>
    <message>
        <source>Pull in glass</source>
        <comment>reading.as_glass_tension_MPa</comment>
        <translation>Tracción en vidrio</translation>
    </message>
    <message>
        <source>Largest, mean through the thickness.</source>
        <comment>reading.as_glass_tension_MPa.help</comment>
        <translation>La mayor, media en el espesor.</translation>
    </message>
    <message>
        <source>Odds of a break in glass</source>
        <comment>reading.as_glass_break_probability</comment>
        <translation>Probabilidad de rotura en vidrio</translation>
    </message>
    <message>
        <source>Energy stored in glass</source>
        <comment>reading.as_glass_energy_J</comment>
        <translation>Energía almacenada en vidrio</translation>
    </message>
    <message>
        <source>Retardation in glass</source>
        <comment>reading.as_glass_retardation_nm</comment>
        <translation>Retardo en vidrio</translation>
    </message>
    <message>
        <source>Largest.</source>
        <comment>reading.as_glass_retardation_nm.help</comment>
        <translation>El mayor.</translation>
    </message>
    <message>
        <source>Retardation</source>
        <comment>reading.retardation_nm</comment>
        <translation>Retardo</translation>
    </message>
</context>
<context>
    <name>scene.light-table</name>
    <message>
        <source>Light table</source>
        <comment>title</comment>
        <translation>Mesa de luz</translation>
    </message>
    <message>
        <source>plain</source>
        <comment>text.plain</comment>
        <translation>corriente</translation>
    </message>
    <message>
        <source>laminated</source>
        <comment>text.laminated</comment>
        <translation>laminado</translation>
    </message>
    <message>
        <source>toughened edge-on</source>
        <comment>text.toughened</comment>
        <translation>templado (canto)</translation>
    </message>
    <message>
        <source>toughened face-on</source>
        <comment>text.toughened-face</comment>
        <translation>templado (cara)</translation>
    </message>
    <message>
        <source>bubble</source>
        <comment>text.bubble</comment>
        <translation>matraz</translation>
    </message>
    <message>
        <source>cooling</source>
        <comment>text.cooling</comment>
        <translation>enfriado</translation>
    </message>
    <message>
        <source>dish</source>
        <comment>text.dish</comment>
        <translation>bandeja</translation>
    </message>
    <message>
        <source>pour</source>
        <comment>text.pour</comment>
        <translation>vasos</translation>
    </message>
    <message>
        <source>push pull</source>
        <comment>text.push-pull</comment>
        <translation>empuje y tirón</translation>
    </message>
    <message>
        <source>ring</source>
        <comment>text.ring</comment>
        <translation>botella</translation>
    </message>
    <message>
        <source>touch</source>
        <comment>text.touch</comment>
        <translation>toque cálido</translation>
    </message>
    <message>
        <source>under the glass</source>
        <comment>text.here</comment>
        <translation>bajo la lupa</translation>
    </message>
    <message>
        <source>retardation</source>
        <comment>text.retardation</comment>
        <translation>retardo</translation>
    </message>
    <message>
        <source>sample</source>
        <comment>text.sample</comment>
        <translation>muestra</translation>
    </message>
    <message>
        <source>The lamp alone: light that swings in all directions. There is nothing to see yet.</source>
        <comment>text.lamp</comment>
        <translation>Solo la lámpara: luz que vibra en todas las direcciones. Aún no hay nada que ver.</translation>
    </message>
    <message>
        <source>One filter is in. It lets through what swings its way, which is half: the light is half as bright, and still there is nothing to see.</source>
        <comment>text.one_filter</comment>
        <translation>Hay un filtro. Deja pasar lo que vibra en su dirección, que es la mitad: la luz brilla la mitad y sigue sin verse nada.</translation>
    </message>
    <message>
        <source>The second filter stands across the first: it stops all that the first lets through. Now only what turns light between them can shine.</source>
        <comment>text.crossed</comment>
        <translation>El segundo filtro está cruzado con el primero: detiene todo lo que aquel deja pasar. Ahora solo brilla lo que gira la luz entre ambos.</translation>
    </message>
    <message>
        <source>All lie in one light, on one scale. The others come, one by one.</source>
        <comment>text.laying</comment>
        <translation>Todas están bajo una misma luz y a una misma escala. Las demás llegan una a una.</translation>
    </message>
    <message>
        <source>Dark: {dark}. Coloured in places: {partly}; all over: {coloured}. Beyond some {limit:.0f} nm white light loses one colour after another.</source>
        <comment>text.sorted</comment>
        <translation>Oscuro: {dark}. Con color en partes: {partly}; en todo: {coloured}. A partir de unos {limit:.0f} nm la luz blanca pierde un color tras otro.</translation>
    </message>
    <message>
        <source>Dark: {dark}. Grey: {grey}. Coloured in places: {partly}; all over: {coloured}. Beyond some {limit:.0f} nm white light loses one colour after another.</source>
        <comment>text.sorted_grey</comment>
        <translation>Oscuro: {dark}. Gris: {grey}. Con color en partes: {partly}; en todo: {coloured}. A partir de unos {limit:.0f} nm la luz blanca pierde un color tras otro.</translation>
    </message>
    <message>
        <source>Dark: {dark}. Light that meets no stress on its way, or pull and squeeze alike, is stopped by the crossed filter.</source>
        <comment>text.all_dark</comment>
        <translation>Oscuro: {dark}. El filtro cruzado detiene la luz que no encuentra tensión en su camino, o tanta tracción como compresión.</translation>
    </message>
    <message>
        <source>Dark: {dark}. Grey: {grey}. Below some {limit:.0f} nm of retardation all colours of the white light still come through, some more, some less: grey and white.</source>
        <comment>text.no_colour</comment>
        <translation>Oscuro: {dark}. Gris: {grey}. Por debajo de unos {limit:.0f} nm de retardo aún pasan todos los colores de la luz blanca, unos más y otros menos: gris y blanco.</translation>
    </message>
    <message>
        <source>The tint plate adds {plate:.0f} nm: without stress all is {colour}, and even a little turns it blue where it adds to the plate, yellow where it takes away.</source>
        <comment>text.tint</comment>
        <translation>La lámina de onda añade {plate:.0f} nm: sin tensión todo es de color {colour}; un poco basta para volverlo azul donde se suma a la lámina y amarillo donde resta.</translation>
    </message>
    <message>
        <source>Light of one colour has no colours to lose: there is but bright and dark, and each dark line is one wavelength, {wave:.0f} nm, of retardation more.</source>
        <comment>text.one_colour</comment>
        <translation>La luz de un solo color no tiene colores que perder: solo hay claro y oscuro, y cada línea oscura es una longitud de onda, {wave:.0f} nm, más de retardo.</translation>
    </message>
    <message>
        <source>The filters stand along the samples. Stress along or across a sample does not turn such light: what was bright goes dark, whatever its stress.</source>
        <comment>text.along</comment>
        <translation>Los filtros están alineados con las muestras. La tensión a lo largo o a lo ancho no gira esa luz: lo que brillaba se oscurece, sea cual sea la tensión.</translation>
    </message>
    <message>
        <source>none</source>
        <comment>text.none</comment>
        <translation>nada</translation>
    </message>
    <message>
        <source>Under the glass: {nm:.0f} nm, order {order:.2f}. In {path:g} mm of glass the pulls along and across then differ by {stress:.1f} MPa.</source>
        <comment>text.point_stress</comment>
        <translation>Bajo la lupa: {nm:.0f} nm, orden {order:.2f}. En {path:g} mm de vidrio, las tracciones a lo largo y a lo ancho difieren entonces en {stress:.1f} MPa.</translation>
    </message>
    <message>
        <source>Under the glass: {nm:.0f} nm, order {order:.2f}. How far the light goes through this wall differs from place to place, so colour alone tells no stress.</source>
        <comment>text.point_path</comment>
        <translation>Bajo la lupa: {nm:.0f} nm, orden {order:.2f}. El camino de la luz por esta pared cambia de un sitio a otro, así que el color solo no indica la tensión.</translation>
    </message>
    <message>
        <source>Under the glass: {nm:.0f} nm, order {order:.2f}. Molecules that froze drawn out make most of it, so it is no measure of stress.</source>
        <comment>text.point_molecules</comment>
        <translation>Bajo la lupa: {nm:.0f} nm, orden {order:.2f}. La mayor parte son moléculas congeladas estiradas, así que no mide la tensión.</translation>
    </message>
    <message>
        <source>Build it up</source>
        <comment>action.build_up</comment>
        <translation>Montarlo</translation>
    </message>
    <message>
        <source>Samples</source>
        <comment>setting.samples</comment>
        <translation>Muestras</translation>
    </message>
    <message>
        <source>What lies on the table, up to six; other scenes' pieces as they are by default.</source>
        <comment>setting.samples.help</comment>
        <translation>Lo que hay en la mesa, hasta seis; piezas de otras escenas con sus valores iniciales.</translation>
    </message>
    <message>
        <source>Plain</source>
        <comment>choice.samples.plain</comment>
        <translation>Corriente</translation>
    </message>
    <message>
        <source>Laminated</source>
        <comment>choice.samples.laminated</comment>
        <translation>Laminado</translation>
    </message>
    <message>
        <source>Toughened</source>
        <comment>choice.samples.toughened</comment>
        <translation>Templado (canto)</translation>
    </message>
    <message>
        <source>Toughened face</source>
        <comment>choice.samples.toughened-face</comment>
        <translation>Templado (cara)</translation>
    </message>
    <message>
        <source>Bubble</source>
        <comment>choice.samples.bubble</comment>
        <translation>Matraz</translation>
    </message>
    <message>
        <source>Cooling</source>
        <comment>choice.samples.cooling</comment>
        <translation>Enfriado</translation>
    </message>
    <message>
        <source>Dish</source>
        <comment>choice.samples.dish</comment>
        <translation>Bandeja</translation>
    </message>
    <message>
        <source>Pour</source>
        <comment>choice.samples.pour</comment>
        <translation>Vasos</translation>
    </message>
    <message>
        <source>Push pull</source>
        <comment>choice.samples.push-pull</comment>
        <translation>Empuje y tirón</translation>
    </message>
    <message>
        <source>Ring</source>
        <comment>choice.samples.ring</comment>
        <translation>Botella</translation>
    </message>
    <message>
        <source>Touch</source>
        <comment>choice.samples.touch</comment>
        <translation>Toque cálido</translation>
    </message>
    <message>
        <source>Turn the polarizers</source>
        <comment>setting.turn_deg</comment>
        <translation>Girar los polarizadores</translation>
    </message>
    <message>
        <source>Angle of the pair of polarizers.</source>
        <comment>setting.turn_deg.help</comment>
        <translation>Ángulo del par de polarizadores.</translation>
    </message>
    <message>
        <source>Tint plate</source>
        <comment>setting.tint_plate</comment>
        <translation>Lámina de onda</translation>
    </message>
    <message>
        <source>Shows small stress and its sign as colour.</source>
        <comment>setting.tint_plate.help</comment>
        <translation>Muestra tensiones pequeñas y su signo como color.</translation>
    </message>
    <message>
        <source>Lamp</source>
        <comment>setting.lamp</comment>
        <translation>Lámpara</translation>
    </message>
    <message>
        <source>White light or one colour.</source>
        <comment>setting.lamp.help</comment>
        <translation>Luz blanca o de un solo color.</translation>
    </message>
    <message>
        <source>Daylight</source>
        <comment>choice.lamp.daylight</comment>
        <translation>Luz de día</translation>
    </message>
    <message>
        <source>Incandescent</source>
        <comment>choice.lamp.incandescent</comment>
        <translation>Incandescente</translation>
    </message>
    <message>
        <source>White led</source>
        <comment>choice.lamp.white-led</comment>
        <translation>LED blanca</translation>
    </message>
    <message>
        <source>Sodium</source>
        <comment>choice.lamp.sodium</comment>
        <translation>Sodio</translation>
    </message>
    <message>
        <source>Green</source>
        <comment>choice.lamp.green</comment>
        <translation>Verde</translation>
    </message>
    <message>
        <source>Built up to</source>
        <comment>setting.built</comment>
        <translation>Montado hasta</translation>
    </message>
    <message>
        <source>The lamp alone, one filter, the crossed filter, then the samples.</source>
        <comment>setting.built.help</comment>
        <translation>Solo la lámpara, un filtro, el filtro cruzado y luego las muestras.</translation>
    </message>
    <message>
        <source>Lamp</source>
        <comment>choice.built.lamp</comment>
        <translation>Lámpara</translation>
    </message>
    <message>
        <source>One filter</source>
        <comment>choice.built.one-filter</comment>
        <translation>Un filtro</translation>
    </message>
    <message>
        <source>Crossed</source>
        <comment>choice.built.crossed</comment>
        <translation>Cruzado</translation>
    </message>
    <message>
        <source>Samples</source>
        <comment>choice.built.samples</comment>
        <translation>Muestras</translation>
    </message>
    <message>
        <source>Plain, median</source>
        <comment>reading.plain_retardation_median_nm</comment>
        <translation>Corriente, mediana</translation>
    </message>
    <message>
        <source>Half of it has less.</source>
        <comment>reading.plain_retardation_median_nm.help</comment>
        <translation>La mitad tiene menos.</translation>
    </message>
    <message>
        <source>Plain, 95 %</source>
        <comment>reading.plain_retardation_p95_nm</comment>
        <translation>Corriente, 95 %</translation>
    </message>
    <message>
        <source>95 % of it has less.</source>
        <comment>reading.plain_retardation_p95_nm.help</comment>
        <translation>El 95 % tiene menos.</translation>
    </message>
    <message>
        <source>Laminated, median</source>
        <comment>reading.laminated_retardation_median_nm</comment>
        <translation>Laminado, mediana</translation>
    </message>
    <message>
        <source>Half of it has less.</source>
        <comment>reading.laminated_retardation_median_nm.help</comment>
        <translation>La mitad tiene menos.</translation>
    </message>
    <message>
        <source>Laminated, 95 %</source>
        <comment>reading.laminated_retardation_p95_nm</comment>
        <translation>Laminado, 95 %</translation>
    </message>
    <message>
        <source>95 % of it has less.</source>
        <comment>reading.laminated_retardation_p95_nm.help</comment>
        <translation>El 95 % tiene menos.</translation>
    </message>
    <message>
        <source>Toughened edge-on, median</source>
        <comment>reading.toughened_retardation_median_nm</comment>
        <translation>Templado (canto), mediana</translation>
    </message>
    <message>
        <source>Half of it has less.</source>
        <comment>reading.toughened_retardation_median_nm.help</comment>
        <translation>La mitad tiene menos.</translation>
    </message>
    <message>
        <source>Toughened edge-on, 95 %</source>
        <comment>reading.toughened_retardation_p95_nm</comment>
        <translation>Templado (canto), 95 %</translation>
    </message>
    <message>
        <source>95 % of it has less.</source>
        <comment>reading.toughened_retardation_p95_nm.help</comment>
        <translation>El 95 % tiene menos.</translation>
    </message>
    <message>
        <source>Toughened face-on, median</source>
        <comment>reading.toughened_face_retardation_median_nm</comment>
        <translation>Templado (cara), mediana</translation>
    </message>
    <message>
        <source>Half of it has less.</source>
        <comment>reading.toughened_face_retardation_median_nm.help</comment>
        <translation>La mitad tiene menos.</translation>
    </message>
    <message>
        <source>Toughened face-on, 95 %</source>
        <comment>reading.toughened_face_retardation_p95_nm</comment>
        <translation>Templado (cara), 95 %</translation>
    </message>
    <message>
        <source>95 % of it has less.</source>
        <comment>reading.toughened_face_retardation_p95_nm.help</comment>
        <translation>El 95 % tiene menos.</translation>
    </message>
    <message>
        <source>Bubble, median</source>
        <comment>reading.bubble_retardation_median_nm</comment>
        <translation>Matraz, mediana</translation>
    </message>
    <message>
        <source>Half of it has less.</source>
        <comment>reading.bubble_retardation_median_nm.help</comment>
        <translation>La mitad tiene menos.</translation>
    </message>
    <message>
        <source>Bubble, 95 %</source>
        <comment>reading.bubble_retardation_p95_nm</comment>
        <translation>Matraz, 95 %</translation>
    </message>
    <message>
        <source>95 % of it has less.</source>
        <comment>reading.bubble_retardation_p95_nm.help</comment>
        <translation>El 95 % tiene menos.</translation>
    </message>
    <message>
        <source>Cooling, median</source>
        <comment>reading.cooling_retardation_median_nm</comment>
        <translation>Enfriado, mediana</translation>
    </message>
    <message>
        <source>Half of it has less.</source>
        <comment>reading.cooling_retardation_median_nm.help</comment>
        <translation>La mitad tiene menos.</translation>
    </message>
    <message>
        <source>Cooling, 95 %</source>
        <comment>reading.cooling_retardation_p95_nm</comment>
        <translation>Enfriado, 95 %</translation>
    </message>
    <message>
        <source>95 % of it has less.</source>
        <comment>reading.cooling_retardation_p95_nm.help</comment>
        <translation>El 95 % tiene menos.</translation>
    </message>
    <message>
        <source>Dish, median</source>
        <comment>reading.dish_retardation_median_nm</comment>
        <translation>Bandeja, mediana</translation>
    </message>
    <message>
        <source>Half of it has less.</source>
        <comment>reading.dish_retardation_median_nm.help</comment>
        <translation>La mitad tiene menos.</translation>
    </message>
    <message>
        <source>Dish, 95 %</source>
        <comment>reading.dish_retardation_p95_nm</comment>
        <translation>Bandeja, 95 %</translation>
    </message>
    <message>
        <source>95 % of it has less.</source>
        <comment>reading.dish_retardation_p95_nm.help</comment>
        <translation>El 95 % tiene menos.</translation>
    </message>
    <message>
        <source>Pour, median</source>
        <comment>reading.pour_retardation_median_nm</comment>
        <translation>Vasos, mediana</translation>
    </message>
    <message>
        <source>Half of it has less.</source>
        <comment>reading.pour_retardation_median_nm.help</comment>
        <translation>La mitad tiene menos.</translation>
    </message>
    <message>
        <source>Pour, 95 %</source>
        <comment>reading.pour_retardation_p95_nm</comment>
        <translation>Vasos, 95 %</translation>
    </message>
    <message>
        <source>95 % of it has less.</source>
        <comment>reading.pour_retardation_p95_nm.help</comment>
        <translation>El 95 % tiene menos.</translation>
    </message>
    <message>
        <source>Push pull, median</source>
        <comment>reading.push_pull_retardation_median_nm</comment>
        <translation>Empuje y tirón, mediana</translation>
    </message>
    <message>
        <source>Half of it has less.</source>
        <comment>reading.push_pull_retardation_median_nm.help</comment>
        <translation>La mitad tiene menos.</translation>
    </message>
    <message>
        <source>Push pull, 95 %</source>
        <comment>reading.push_pull_retardation_p95_nm</comment>
        <translation>Empuje y tirón, 95 %</translation>
    </message>
    <message>
        <source>95 % of it has less.</source>
        <comment>reading.push_pull_retardation_p95_nm.help</comment>
        <translation>El 95 % tiene menos.</translation>
    </message>
    <message>
        <source>Ring, median</source>
        <comment>reading.ring_retardation_median_nm</comment>
        <translation>Botella, mediana</translation>
    </message>
    <message>
        <source>Half of it has less.</source>
        <comment>reading.ring_retardation_median_nm.help</comment>
        <translation>La mitad tiene menos.</translation>
    </message>
    <message>
        <source>Ring, 95 %</source>
        <comment>reading.ring_retardation_p95_nm</comment>
        <translation>Botella, 95 %</translation>
    </message>
    <message>
        <source>95 % of it has less.</source>
        <comment>reading.ring_retardation_p95_nm.help</comment>
        <translation>El 95 % tiene menos.</translation>
    </message>
    <message>
        <source>Touch, median</source>
        <comment>reading.touch_retardation_median_nm</comment>
        <translation>Toque cálido, mediana</translation>
    </message>
    <message>
        <source>Half of it has less.</source>
        <comment>reading.touch_retardation_median_nm.help</comment>
        <translation>La mitad tiene menos.</translation>
    </message>
    <message>
        <source>Touch, 95 %</source>
        <comment>reading.touch_retardation_p95_nm</comment>
        <translation>Toque cálido, 95 %</translation>
    </message>
    <message>
        <source>95 % of it has less.</source>
        <comment>reading.touch_retardation_p95_nm.help</comment>
        <translation>El 95 % tiene menos.</translation>
    </message>
    <message>
        <source>Under the glass</source>
        <comment>reading.point_retardation_nm</comment>
        <translation>Bajo la lupa</translation>
    </message>
    <message>
        <source>Where the reading glass is held.</source>
        <comment>reading.point_retardation_nm.help</comment>
        <translation>Donde se sostiene la lupa.</translation>
    </message>
    <message>
        <source>Order there</source>
        <comment>reading.point_order</comment>
        <translation>Orden allí</translation>
    </message>
    <message>
        <source>Over 565 nm, or over a one-colour lamp's wave.</source>
        <comment>reading.point_order.help</comment>
        <translation>Entre 565 nm o la onda de una lámpara de un color.</translation>
    </message>
    <message>
        <source>Stress there</source>
        <comment>reading.point_stress_MPa</comment>
        <translation>Tensión allí</translation>
    </message>
    <message>
        <source>Difference of both principal stresses.</source>
        <comment>reading.point_stress_MPa.help</comment>
        <translation>Diferencia de las dos tensiones principales.</translation>
    </message>
</context>
<context>
    <name>scene.pour</name>
    <message>
        <source>Boiling water</source>
        <comment>title</comment>
        <translation>Agua hirviendo</translation>
    </message>
    <message>
        <source>Boiling water will go into a thick and a thin tumbler. Most people bet that the thin one cracks.</source>
        <comment>text.waiting</comment>
        <translation>Va a caer agua hirviendo en un vaso grueso y en uno fino. La mayoría apuesta a que se agrieta el fino.</translation>
    </message>
    <message>
        <source>Both tumblers have been warmed to {warm:.0f} °C. That is the whole trick: the water can hardly shock them now.</source>
        <comment>text.waiting_warm</comment>
        <translation>Los dos vasos se han calentado a {warm:.0f} °C. Ese es todo el truco: el agua apenas puede ya darles un choque.</translation>
    </message>
    <message>
        <source>The water warms the inside first. It wants to grow, the cold outside is pulled: thick {thick:.0f} MPa, thin {thin:.0f} MPa.</source>
        <comment>text.pouring</comment>
        <translation>El agua calienta primero el interior. Quiere crecer y el exterior frío sufre tracción: grueso {thick:.0f} MPa, fino {thin:.0f} MPa.</translation>
    </message>
    <message>
        <source>The water chills the inside. It wants to shrink and is pulled: thick {thick:.0f} MPa, thin {thin:.0f} MPa.</source>
        <comment>text.pouring_cold</comment>
        <translation>El agua enfría el interior. Quiere encoger y sufre tracción: grueso {thick:.0f} MPa, fino {thin:.0f} MPa.</translation>
    </message>
    <message>
        <source>The thin wall is warm right through and calm again. The outside of the thick wall is still cold and pulled with {thick:.0f} MPa.</source>
        <comment>text.lagging</comment>
        <translation>La pared fina está caliente del todo y en calma. El exterior de la gruesa sigue frío, a {thick:.0f} MPa de tracción.</translation>
    </message>
    <message>
        <source>Bet lost: the thick one is {times:.0f} times likelier to crack. Its pull reached {thick:.0f} MPa, that of the thin one {thin:.0f} MPa.</source>
        <comment>text.thick_worse</comment>
        <translation>Apuesta perdida: es {times:.0f} veces más probable que se agriete el grueso. Su tracción llegó a {thick:.0f} MPa, la del fino a {thin:.0f} MPa.</translation>
    </message>
    <message>
        <source>This time the thin one is {times:.0f} times likelier to crack: its pull reached {thin:.0f} MPa, that of the thick one {thick:.0f} MPa.</source>
        <comment>text.thin_worse</comment>
        <translation>Esta vez es {times:.0f} veces más probable que se agriete el fino: su tracción llegó a {thin:.0f} MPa, la del grueso a {thick:.0f} MPa.</translation>
    </message>
    <message>
        <source>Both hold alike: the pull reached {thick:.1f} MPa in the thick one and {thin:.1f} MPa in the thin one.</source>
        <comment>text.alike</comment>
        <translation>Los dos aguantan igual: la tracción llegó a {thick:.1f} MPa en el grueso y a {thin:.1f} MPa en el fino.</translation>
    </message>
    <message>
        <source>The thick one has cracked after {at:.0f} s: its cold outside was pulled with {pull:.0f} MPa, and the scratch did the rest.</source>
        <comment>text.thick_cracked</comment>
        <translation>El grueso se agrietó a los {at:.0f} s: su exterior frío estaba a {pull:.0f} MPa de tracción, y el arañazo hizo el resto.</translation>
    </message>
    <message>
        <source>The thin one has cracked after {at:.0f} s: a pull of {pull:.0f} MPa was enough for this scratch.</source>
        <comment>text.thin_cracked</comment>
        <translation>El fino se agrietó a los {at:.0f} s: {pull:.0f} MPa de tracción bastaron para este arañazo.</translation>
    </message>
    <message>
        <source>Both have cracked: this scratch is too deep for so hot a pour.</source>
        <comment>text.both_cracked</comment>
        <translation>Los dos se agrietaron: este arañazo es demasiado profundo para un agua tan caliente.</translation>
    </message>
    <message>
        <source>Warm them first</source>
        <comment>action.warm_first</comment>
        <translation>Calentarlos antes</translation>
    </message>
    <message>
        <source>Glass</source>
        <comment>setting.glass</comment>
        <translation>Vidrio</translation>
    </message>
    <message>
        <source>Of both tumblers.</source>
        <comment>setting.glass.help</comment>
        <translation>De los dos vasos.</translation>
    </message>
    <message>
        <source>Borosilicate</source>
        <comment>choice.glass.borosilicate</comment>
        <translation>Borosilicato</translation>
    </message>
    <message>
        <source>Fused silica</source>
        <comment>choice.glass.fused-silica</comment>
        <translation>Sílice fundida</translation>
    </message>
    <message>
        <source>Lead crystal</source>
        <comment>choice.glass.lead-crystal</comment>
        <translation>Cristal de plomo</translation>
    </message>
    <message>
        <source>Soda lime</source>
        <comment>choice.glass.soda-lime</comment>
        <translation>Sodocálcico</translation>
    </message>
    <message>
        <source>Thick wall</source>
        <comment>setting.thick_mm</comment>
        <translation>Pared gruesa</translation>
    </message>
    <message>
        <source>Wall and base of one tumbler.</source>
        <comment>setting.thick_mm.help</comment>
        <translation>Pared y base de un vaso.</translation>
    </message>
    <message>
        <source>Thin wall</source>
        <comment>setting.thin_mm</comment>
        <translation>Pared fina</translation>
    </message>
    <message>
        <source>Wall and base of the other.</source>
        <comment>setting.thin_mm.help</comment>
        <translation>Pared y base del otro.</translation>
    </message>
    <message>
        <source>Water</source>
        <comment>setting.water_C</comment>
        <translation>Agua</translation>
    </message>
    <message>
        <source>Temperature of the water as it is poured.</source>
        <comment>setting.water_C.help</comment>
        <translation>Temperatura del agua al verterla.</translation>
    </message>
    <message>
        <source>Tumblers</source>
        <comment>setting.tumbler_C</comment>
        <translation>Vasos</translation>
    </message>
    <message>
        <source>Of the glass before; warm it first.</source>
        <comment>setting.tumbler_C.help</comment>
        <translation>Del vidrio antes; caliéntelo primero.</translation>
    </message>
    <message>
        <source>Pour for</source>
        <comment>setting.pour_s</comment>
        <translation>Verter durante</translation>
    </message>
    <message>
        <source>Time in which they are filled.</source>
        <comment>setting.pour_s.help</comment>
        <translation>Tiempo en que se llenan.</translation>
    </message>
    <message>
        <source>Worn</source>
        <comment>setting.worn</comment>
        <translation>Usado</translation>
    </message>
    <message>
        <source>Used for years, or new.</source>
        <comment>setting.worn.help</comment>
        <translation>Años de uso, o nuevo.</translation>
    </message>
    <message>
        <source>Scratch</source>
        <comment>setting.scratch_um</comment>
        <translation>Arañazo</translation>
    </message>
    <message>
        <source>Depth of a long scratch outside, where it is worst; 0: none.</source>
        <comment>setting.scratch_um.help</comment>
        <translation>Profundidad de un arañazo largo exterior, donde es peor; 0: ninguno.</translation>
    </message>
    <message>
        <source>Thick: pull outside</source>
        <comment>reading.thick_tension_MPa</comment>
        <translation>Grueso: tracción exterior</translation>
    </message>
    <message>
        <source>Largest over the run.</source>
        <comment>reading.thick_tension_MPa.help</comment>
        <translation>La mayor del proceso.</translation>
    </message>
    <message>
        <source>Thin: pull outside</source>
        <comment>reading.thin_tension_MPa</comment>
        <translation>Fino: tracción exterior</translation>
    </message>
    <message>
        <source>Largest over the run.</source>
        <comment>reading.thin_tension_MPa.help</comment>
        <translation>La mayor del proceso.</translation>
    </message>
    <message>
        <source>Thick: odds of a crack</source>
        <comment>reading.thick_break_probability</comment>
        <translation>Grueso: probabilidad de grieta</translation>
    </message>
    <message>
        <source>Over the spread of flaws.</source>
        <comment>reading.thick_break_probability.help</comment>
        <translation>Según la dispersión de defectos.</translation>
    </message>
    <message>
        <source>Thin: odds of a crack</source>
        <comment>reading.thin_break_probability</comment>
        <translation>Fino: probabilidad de grieta</translation>
    </message>
    <message>
        <source>Over the spread of flaws.</source>
        <comment>reading.thin_break_probability.help</comment>
        <translation>Según la dispersión de defectos.</translation>
    </message>
    <message>
        <source>Thick: pull inside</source>
        <comment>reading.thick_inside_MPa</comment>
        <translation>Grueso: tracción interior</translation>
    </message>
    <message>
        <source>Largest over the run; water side.</source>
        <comment>reading.thick_inside_MPa.help</comment>
        <translation>La mayor del proceso; lado del agua.</translation>
    </message>
    <message>
        <source>Thin: pull inside</source>
        <comment>reading.thin_inside_MPa</comment>
        <translation>Fino: tracción interior</translation>
    </message>
    <message>
        <source>Largest over the run; water side.</source>
        <comment>reading.thin_inside_MPa.help</comment>
        <translation>La mayor del proceso; lado del agua.</translation>
    </message>
    <message>
        <source>Thick over thin</source>
        <comment>reading.odds_ratio</comment>
        <translation>Grueso frente a fino</translation>
    </message>
    <message>
        <source>How many times likelier the thick one cracks.</source>
        <comment>reading.odds_ratio.help</comment>
        <translation>Cuántas veces más probable es que se agriete el grueso.</translation>
    </message>
    <message>
        <source>Thick: K over K_IC</source>
        <comment>reading.thick_intensity_ratio</comment>
        <translation>Grueso: K sobre K_IC</translation>
    </message>
    <message>
        <source>Of the stated flaw, at its peak.</source>
        <comment>reading.thick_intensity_ratio.help</comment>
        <translation>Del defecto indicado, en su máximo.</translation>
    </message>
    <message>
        <source>Thin: K over K_IC</source>
        <comment>reading.thin_intensity_ratio</comment>
        <translation>Fino: K sobre K_IC</translation>
    </message>
    <message>
        <source>Of the stated flaw, at its peak.</source>
        <comment>reading.thin_intensity_ratio.help</comment>
        <translation>Del defecto indicado, en su máximo.</translation>
    </message>
    <message>
        <source>Thick cracks</source>
        <comment>reading.thick_breaks</comment>
        <translation>El grueso se agrieta</translation>
    </message>
    <message>
        <source>The verdict for the stated flaw.</source>
        <comment>reading.thick_breaks.help</comment>
        <translation>El veredicto para el defecto indicado.</translation>
    </message>
    <message>
        <source>Thin cracks</source>
        <comment>reading.thin_breaks</comment>
        <translation>El fino se agrieta</translation>
    </message>
    <message>
        <source>The verdict for the stated flaw.</source>
        <comment>reading.thin_breaks.help</comment>
        <translation>El veredicto para el defecto indicado.</translation>
    </message>
    <message>
        <source>Water in the thick one</source>
        <comment>reading.thick_water_C</comment>
        <translation>Agua en el grueso</translation>
    </message>
    <message>
        <source>Water in the thin one</source>
        <comment>reading.thin_water_C</comment>
        <translation>Agua en el fino</translation>
    </message>
    <message>
        <source>Retardation peak</source>
        <comment>reading.retardation_peak_nm</comment>
        <translation>Retardo máximo</translation>
    </message>
    <message>
        <source>Largest over the run.</source>
        <comment>reading.retardation_peak_nm.help</comment>
        <translation>La mayor del proceso.</translation>
    </message>
    <message>
        <source>Thin, outside</source>
        <comment>reading.thin_outside_MPa</comment>
        <translation>Fino, exterior</translation>
    </message>
    <message>
        <source>Thick, inside</source>
        <comment>reading.thick_wall_MPa</comment>
        <translation>Grueso, interior</translation>
    </message>
    <message>
        <source>Thick, outside</source>
        <comment>reading.thick_outside_MPa</comment>
        <translation>Grueso, exterior</translation>
    </message>
    <message>
        <source>Thin, inside</source>
        <comment>reading.thin_wall_MPa</comment>
        <translation>Fino, interior</translation>
    </message>
</context>
<context>
    <name>scene.push-pull</name>
    <message>
        <source>Push and pull</source>
        <comment>title</comment>
        <translation>Empujar y tirar</translation>
    </message>
    <message>
        <source>Nobody touches it: there is no stress in it, and it stays dark.</source>
        <comment>text.untouched</comment>
        <translation>Nadie la toca: no hay tensión en ella y sigue oscura.</translation>
    </message>
    <message>
        <source>The hands pull with {force:.0f} N, and everywhere in the bar all the pull adds up to just that: {net:.0f} N.</source>
        <comment>text.pulled</comment>
        <translation>Las manos tiran con {force:.0f} N, y en cualquier punto de la barra toda la tracción suma justo eso: {net:.0f} N.</translation>
    </message>
    <message>
        <source>The hands pull with {force:.0f} N, and all the pull in the bar adds up to just that. It opens the small cracks by {gape:.2f} µm, {percent:.0f} % of the way to a break.</source>
        <comment>text.pulled_crack</comment>
        <translation>Las manos tiran con {force:.0f} N, y toda la tracción de la barra suma justo eso. Abre las pequeñas grietas {gape:.2f} µm, el {percent:.0f} % del camino a la rotura.</translation>
    </message>
    <message>
        <source>The hands squeeze with {force:.0f} N, and everywhere in the bar all the squeeze adds up to just that: {net:.0f} N.</source>
        <comment>text.squeezed</comment>
        <translation>Las manos aprietan con {force:.0f} N, y en cualquier punto de la barra toda la compresión suma justo eso: {net:.0f} N.</translation>
    </message>
    <message>
        <source>The hands squeeze with {force:.0f} N, and all the squeeze in the bar adds up to just that. It presses the small cracks shut.</source>
        <comment>text.squeezed_crack</comment>
        <translation>Las manos aprietan con {force:.0f} N, y toda la compresión de la barra suma justo eso. Mantiene cerradas las pequeñas grietas.</translation>
    </message>
    <message>
        <source>Below it is pulled with {pull:.0f} N in all, above it is squeezed with {squeeze:.0f} N: pull and squeeze add up to zero.</source>
        <comment>text.bent</comment>
        <translation>Abajo hay {pull:.0f} N de tracción en total, arriba {squeeze:.0f} N de compresión: juntas suman cero.</translation>
    </message>
    <message>
        <source>Below it is pulled with {pull:.0f} N in all, above it is squeezed with {squeeze:.0f} N: together zero. The crack below opens by {gape:.2f} µm, {percent:.0f} % of the way to a break; the one above is pressed shut.</source>
        <comment>text.bent_crack</comment>
        <translation>Abajo hay {pull:.0f} N de tracción en total, arriba {squeeze:.0f} N de compresión: suman cero. La grieta de abajo se abre {gape:.2f} µm, el {percent:.0f} % del camino a la rotura; la de arriba se cierra.</translation>
    </message>
    <message>
        <source>Squeezed from above and below, the disk is pulled apart sideways: across the upright cut {pull:.0f} N of pull and {squeeze:.0f} N of squeeze add up to zero.</source>
        <comment>text.disk</comment>
        <translation>Apretado por arriba y por abajo, el disco se estira hacia los lados: en el corte vertical {pull:.0f} N de tracción y {squeeze:.0f} N de compresión suman cero.</translation>
    </message>
    <message>
        <source>Squeezed from above and below, the disk is pulled apart sideways: the upright crack opens by {gape:.2f} µm, {percent:.0f} % of the way to a break; the lying one is pressed shut.</source>
        <comment>text.disk_crack</comment>
        <translation>Apretado por arriba y por abajo, el disco se estira hacia los lados: la grieta vertical se abre {gape:.2f} µm, el {percent:.0f} % del camino a la rotura; la horizontal se cierra.</translation>
    </message>
    <message>
        <source>The plate is hot and soft: what pulls in it flows away at once.</source>
        <comment>text.hot</comment>
        <translation>La placa está caliente y blanda: lo que tira en ella se relaja al instante.</translation>
    </message>
    <message>
        <source>The skin is cooler than the middle and at the moment {does} with {skin:.0f} MPa; pull and squeeze add up to zero all the time.</source>
        <comment>text.cooling</comment>
        <translation>La piel está más fría que el centro y ahora soporta {does} de {skin:.0f} MPa; tracción y compresión suman cero en todo momento.</translation>
    </message>
    <message>
        <source>Nobody touches it, and still its skin is squeezed with {skin:.0f} MPa and its middle pulled with {middle:.0f} MPa: {pull:.0f} N against {squeeze:.0f} N, together zero.</source>
        <comment>text.locked</comment>
        <translation>Nadie la toca, y aun así la piel está a {skin:.0f} MPa de compresión y el centro a {middle:.0f} MPa de tracción: {pull:.0f} N contra {squeeze:.0f} N, en total cero.</translation>
    </message>
    <message>
        <source>Nobody touches it, and still its skin is squeezed with {skin:.0f} MPa and its middle pulled with {middle:.0f} MPa, together zero. The squeeze presses the cracks shut.</source>
        <comment>text.locked_crack</comment>
        <translation>Nadie la toca, y aun así la piel está a {skin:.0f} MPa de compresión y el centro a {middle:.0f} MPa de tracción, en total cero. La compresión cierra las grietas.</translation>
    </message>
    <message>
        <source>The cracks have got through the squeezed skin into the pull behind it: {percent:.0f} % of the way to a break, and nobody touches it.</source>
        <comment>text.locked_reached</comment>
        <translation>Las grietas han atravesado la piel comprimida hasta la tracción de detrás: el {percent:.0f} % del camino a la rotura, y nadie la toca.</translation>
    </message>
    <message>
        <source>The crack ran, {at:.1f} s after the start: two parts, and with nothing to hold on to the stress is gone.</source>
        <comment>text.broke</comment>
        <translation>La grieta corrió {at:.1f} s después del inicio: dos partes, y sin nada a que agarrarse la tensión ha desaparecido.</translation>
    </message>
    <message>
        <source>The crack reached the pull inside and ran: two parts, each with its own pull and squeeze, and in each they add up to zero.</source>
        <comment>text.broke_slice</comment>
        <translation>La grieta alcanzó la tracción interior y corrió: dos partes, cada una con su tracción y su compresión, que en ambas suman cero.</translation>
    </message>
    <message>
        <source>It broke at an ordinary scratch, {at:.1f} s after the start: such a pull breaks most pieces that have been in use.</source>
        <comment>text.broke_flaw</comment>
        <translation>Se rompió por un arañazo corriente, {at:.1f} s después del inicio: una tracción así rompe la mayoría de las piezas usadas.</translation>
    </message>
    <message>
        <source>Seen from the side</source>
        <comment>text.section_title</comment>
        <translation>Visto de lado</translation>
    </message>
    <message>
        <source>along the bar</source>
        <comment>text.along</comment>
        <translation>a lo largo de la barra</translation>
    </message>
    <message>
        <source>sideways</source>
        <comment>text.sideways</comment>
        <translation>hacia los lados</translation>
    </message>
    <message>
        <source>stress in the cut</source>
        <comment>text.across</comment>
        <translation>tensión en el corte</translation>
    </message>
    <message>
        <source>height in the cut</source>
        <comment>text.height</comment>
        <translation>altura en el corte</translation>
    </message>
    <message>
        <source>stress</source>
        <comment>text.stress</comment>
        <translation>tensión</translation>
    </message>
    <message>
        <source>all added up, shared out evenly</source>
        <comment>text.mean</comment>
        <translation>todo sumado, repartido por igual</translation>
    </message>
    <message>
        <source>Let go</source>
        <comment>action.let_go</comment>
        <translation>Soltar</translation>
    </message>
    <message>
        <source>What is done</source>
        <comment>setting.kind</comment>
        <translation>Qué se hace</translation>
    </message>
    <message>
        <source>A bar squeezed, pulled, bent over four or three pads; a disk squeezed across; or a toughened slice that nobody touches.</source>
        <comment>setting.kind.help</comment>
        <translation>Una barra apretada, estirada, doblada sobre cuatro o tres apoyos; un disco apretado; o una lámina templada que nadie toca.</translation>
    </message>
    <message>
        <source>Bar squeezed</source>
        <comment>choice.kind.bar-squeezed</comment>
        <translation>Barra apretada</translation>
    </message>
    <message>
        <source>Bar pulled</source>
        <comment>choice.kind.bar-pulled</comment>
        <translation>Barra estirada</translation>
    </message>
    <message>
        <source>Bar bent</source>
        <comment>choice.kind.bar-bent</comment>
        <translation>Barra doblada</translation>
    </message>
    <message>
        <source>Bar bent three</source>
        <comment>choice.kind.bar-bent-three</comment>
        <translation>Barra doblada, tres apoyos</translation>
    </message>
    <message>
        <source>Disk squeezed</source>
        <comment>choice.kind.disk-squeezed</comment>
        <translation>Disco apretado</translation>
    </message>
    <message>
        <source>Locked in</source>
        <comment>choice.kind.locked-in</comment>
        <translation>Tensión atrapada</translation>
    </message>
    <message>
        <source>Material</source>
        <comment>setting.material</comment>
        <translation>Material</translation>
    </message>
    <message>
        <source>What it is made of.</source>
        <comment>setting.material.help</comment>
        <translation>De qué está hecho.</translation>
    </message>
    <message>
        <source>Borosilicate</source>
        <comment>choice.material.borosilicate</comment>
        <translation>Borosilicato</translation>
    </message>
    <message>
        <source>Fused silica</source>
        <comment>choice.material.fused-silica</comment>
        <translation>Sílice fundida</translation>
    </message>
    <message>
        <source>Lead crystal</source>
        <comment>choice.material.lead-crystal</comment>
        <translation>Cristal de plomo</translation>
    </message>
    <message>
        <source>Polystyrene</source>
        <comment>choice.material.polystyrene</comment>
        <translation>Poliestireno</translation>
    </message>
    <message>
        <source>Soda lime</source>
        <comment>choice.material.soda-lime</comment>
        <translation>Sodocálcico</translation>
    </message>
    <message>
        <source>Force of the hands</source>
        <comment>setting.load</comment>
        <translation>Fuerza de las manos</translation>
    </message>
    <message>
        <source>Grows to this bit by bit; a piece with locked-in stress is not touched.</source>
        <comment>setting.load.help</comment>
        <translation>Crece poco a poco hasta aquí; una pieza con tensión atrapada no se toca.</translation>
    </message>
    <message>
        <source>Thickness</source>
        <comment>setting.thickness_mm</comment>
        <translation>Espesor</translation>
    </message>
    <message>
        <source>Path of the light.</source>
        <comment>setting.thickness_mm.help</comment>
        <translation>Camino de la luz.</translation>
    </message>
    <message>
        <source>Small cracks</source>
        <comment>setting.crack_mm</comment>
        <translation>Grietas pequeñas</translation>
    </message>
    <message>
        <source>Length of two small cracks, from the middle of both edges (in a disk: from its middle to either side); 0: none. Too small to show in the colours.</source>
        <comment>setting.crack_mm.help</comment>
        <translation>Longitud de dos grietas pequeñas, desde el centro de ambos bordes (en un disco: desde su centro a cada lado); 0: ninguna. Demasiado pequeñas para verse en los colores.</translation>
    </message>
    <message>
        <source>Jets</source>
        <comment>setting.jet_W_m2K</comment>
        <translation>Chorros</translation>
    </message>
    <message>
        <source>How hard the slice's plate was blown with cold air; for locked-in stress only.</source>
        <comment>setting.jet_W_m2K.help</comment>
        <translation>Con qué fuerza se sopló aire frío sobre la placa; solo para tensión atrapada.</translation>
    </message>
    <message>
        <source>Largest pull</source>
        <comment>reading.tension_MPa</comment>
        <translation>Mayor tracción</translation>
    </message>
    <message>
        <source>In the cut; of a disk in its middle.</source>
        <comment>reading.tension_MPa.help</comment>
        <translation>En el corte; en un disco, en su centro.</translation>
    </message>
    <message>
        <source>Largest squeeze</source>
        <comment>reading.compression_MPa</comment>
        <translation>Mayor compresión</translation>
    </message>
    <message>
        <source>In the cut; of a disk in its middle.</source>
        <comment>reading.compression_MPa.help</comment>
        <translation>En el corte; en un disco, en su centro.</translation>
    </message>
    <message>
        <source>Cut adds up to</source>
        <comment>reading.net_force_N</comment>
        <translation>El corte suma</translation>
    </message>
    <message>
        <source>All stress in the cut: the hands' or zero.</source>
        <comment>reading.net_force_N.help</comment>
        <translation>Toda la tensión del corte: la de las manos o cero.</translation>
    </message>
    <message>
        <source>Half is turned by</source>
        <comment>reading.net_moment_Nm</comment>
        <translation>Una mitad gira con</translation>
    </message>
    <message>
        <source>By the cut and the hands together.</source>
        <comment>reading.net_moment_Nm.help</comment>
        <translation>Por el corte y las manos a la vez.</translation>
    </message>
    <message>
        <source>Cut bends with</source>
        <comment>reading.bending_moment_Nm</comment>
        <translation>El corte dobla con</translation>
    </message>
    <message>
        <source>Balanced by the hands on each half.</source>
        <comment>reading.bending_moment_Nm.help</comment>
        <translation>Lo equilibran las manos en cada mitad.</translation>
    </message>
    <message>
        <source>All pull in the cut</source>
        <comment>reading.pulled_N</comment>
        <translation>Toda la tracción del corte</translation>
    </message>
    <message>
        <source>All squeeze in the cut</source>
        <comment>reading.squeezed_N</comment>
        <translation>Toda la compresión del corte</translation>
    </message>
    <message>
        <source>Hands pull with</source>
        <comment>reading.hands_N</comment>
        <translation>Las manos tiran con</translation>
    </message>
    <message>
        <source>A squeeze is negative.</source>
        <comment>reading.hands_N.help</comment>
        <translation>La compresión es negativa.</translation>
    </message>
    <message>
        <source>Retardation peak</source>
        <comment>reading.retardation_peak_nm</comment>
        <translation>Retardo máximo</translation>
    </message>
    <message>
        <source>Anywhere, over the run.</source>
        <comment>reading.retardation_peak_nm.help</comment>
        <translation>En cualquier lugar, en todo el proceso.</translation>
    </message>
    <message>
        <source>Retardation, middle</source>
        <comment>reading.retardation_middle_nm</comment>
        <translation>Retardo, centro</translation>
    </message>
    <message>
        <source>Largest in the cut.</source>
        <comment>reading.retardation_middle_nm.help</comment>
        <translation>El mayor del corte.</translation>
    </message>
    <message>
        <source>K over K_IC</source>
        <comment>reading.intensity_ratio</comment>
        <translation>K sobre K_IC</translation>
    </message>
    <message>
        <source>Of the crack that is pulled hardest.</source>
        <comment>reading.intensity_ratio.help</comment>
        <translation>De la grieta con mayor tracción.</translation>
    </message>
    <message>
        <source>Crack opens by</source>
        <comment>reading.crack_gape_um</comment>
        <translation>La grieta se abre</translation>
    </message>
    <message>
        <source>The one that is pulled hardest.</source>
        <comment>reading.crack_gape_um.help</comment>
        <translation>La de mayor tracción.</translation>
    </message>
    <message>
        <source>Breaks</source>
        <comment>reading.breaks</comment>
        <translation>Se rompe</translation>
    </message>
    <message>
        <source>The small crack ran, or a pull that breaks most pieces.</source>
        <comment>reading.breaks.help</comment>
        <translation>Corrió la grieta pequeña, o una tracción que rompe la mayoría.</translation>
    </message>
    <message>
        <source>Odds of a break</source>
        <comment>reading.break_probability</comment>
        <translation>Probabilidad de rotura</translation>
    </message>
    <message>
        <source>Without the cracks: handled surfaces.</source>
        <comment>reading.break_probability.help</comment>
        <translation>Sin las grietas: superficies usadas.</translation>
    </message>
    <message>
        <source>All pull</source>
        <comment>reading.pulled_N</comment>
        <translation>Toda la tracción</translation>
    </message>
    <message>
        <source>All squeeze</source>
        <comment>reading.squeezed_N</comment>
        <translation>Toda la compresión</translation>
    </message>
    <message>
        <source>Together</source>
        <comment>reading.net_force_N</comment>
        <translation>En total</translation>
    </message>
    <message>
        <source>Retardation</source>
        <comment>reading.retardation_nm</comment>
        <translation>Retardo</translation>
    </message>
</context>
<context>
    <name>scene.ring</name>
    <message>
        <source>Ring and drop</source>
        <comment>title</comment>
        <translation>Anillo y gota</translation>
    </message>
    <message>
        <source>The bottle is evenly cool and free of stress: between the polarizers it stays dark.</source>
        <comment>text.cold</comment>
        <translation>La botella está fría por igual y sin tensiones: entre los polarizadores sigue oscura.</translation>
    </message>
    <message>
        <source>The ring swells by {swell:.0f} µm. Cold glass on both sides holds it back, so it is squeezed around with {squeeze:.0f} MPa.</source>
        <comment>text.heating</comment>
        <translation>El anillo se dilata {swell:.0f} µm. El vidrio frío de ambos lados lo retiene, así que soporta {squeeze:.0f} MPa de compresión a su alrededor.</translation>
    </message>
    <message>
        <source>The flame is off. The outside of the ring is still squeezed along the bottle with {squeeze:.0f} MPa, until the heat has soaked in.</source>
        <comment>text.evening</comment>
        <translation>La llama está apagada. El exterior del anillo sigue a {squeeze:.0f} MPa de compresión a lo largo de la botella, hasta que penetre el calor.</translation>
    </message>
    <message>
        <source>The flame is off. The skin cools first and is now pulled along the bottle with {pull:.0f} MPa.</source>
        <comment>text.soaking</comment>
        <translation>La llama está apagada. La piel se enfría primero y ahora está a {pull:.0f} MPa de tracción a lo largo de la botella.</translation>
    </message>
    <message>
        <source>The drop chills the skin. It wants to shrink, the hot glass below does not let it: a pull of {pull:.0f} MPa, {percent:.0f} % of what the flaw needs.</source>
        <comment>text.chilled</comment>
        <translation>La gota enfría la piel. Quiere encoger y el vidrio caliente de debajo no la deja: {pull:.0f} MPa de tracción, el {percent:.0f} % de lo que necesita el defecto.</translation>
    </message>
    <message>
        <source>The crack is running through the wall: {depth:.1f} of {wall:.1f} mm.</source>
        <comment>text.cracking</comment>
        <translation>La grieta avanza por la pared: {depth:.1f} de {wall:.1f} mm.</translation>
    </message>
    <message>
        <source>Cracked off {after:.2f} s after the drop, {offset:.1f} mm from the middle of the ring. The pieces let go of most of their stress.</source>
        <comment>text.cracked_drop</comment>
        <translation>Cortada {after:.2f} s después de la gota, a {offset:.1f} mm del centro del anillo. Las partes pierden casi toda su tensión.</translation>
    </message>
    <message>
        <source>Cracked off {after:.2f} s after the drop, in the middle of the ring. The pieces let go of most of their stress.</source>
        <comment>text.cracked_drop_middle</comment>
        <translation>Cortada {after:.2f} s después de la gota, en el centro del anillo. Las partes pierden casi toda su tensión.</translation>
    </message>
    <message>
        <source>It cracked by itself at {at:.1f} s, in the middle of the ring: heat alone pulled hard enough.</source>
        <comment>text.cracked_alone_middle</comment>
        <translation>Se agrietó sola a los {at:.1f} s, en el centro del anillo: el calor por sí solo tiró bastante.</translation>
    </message>
    <message>
        <source>It cracked by itself at {at:.1f} s, {offset:.1f} mm from the middle of the ring: heat alone pulled hard enough.</source>
        <comment>text.cracked_alone</comment>
        <translation>Se agrietó sola a los {at:.1f} s, a {offset:.1f} mm del centro del anillo: el calor por sí solo tiró bastante.</translation>
    </message>
    <message>
        <source>The ring is too hot: above about {limit:.0f} °C the drop floats on its own steam and rolls off, so it hardly cools the glass.</source>
        <comment>text.too_hot</comment>
        <translation>El anillo está demasiado caliente: por encima de unos {limit:.0f} °C la gota flota sobre su propio vapor, rueda y apenas enfría el vidrio.</translation>
    </message>
    <message>
        <source>It holds: the pull reached {percent:.0f} % of what the flaw needs to become a crack.</source>
        <comment>text.held</comment>
        <translation>Aguanta: la tracción llegó al {percent:.0f} % de lo que el defecto necesita para volverse grieta.</translation>
    </message>
    <message>
        <source>Everything cools together, the stress fades and the picture goes dark again.</source>
        <comment>text.fading</comment>
        <translation>Todo se enfría a la vez, la tensión se desvanece y la imagen vuelve a oscurecerse.</translation>
    </message>
    <message>
        <source>The ring is hot enough to flow. Stress is running out of it now and will come back, the other way round, as it cools.</source>
        <comment>text.soft</comment>
        <translation>El anillo está lo bastante caliente para fluir. Ahora la tensión se relaja, y al enfriarse volverá con el signo contrario.</translation>
    </message>
    <message>
        <source>The ring had begun to flow. {stress:.0f} MPa of stress stay locked in although it is cold again.</source>
        <comment>text.locked</comment>
        <translation>El anillo había empezado a fluir. {stress:.0f} MPa de tensión quedan atrapados aunque ya está frío.</translation>
    </message>
    <message>
        <source>along the bottle</source>
        <comment>text.along</comment>
        <translation>a lo largo de la botella</translation>
    </message>
    <message>
        <source>Drop now</source>
        <comment>action.drop_now</comment>
        <translation>Gota ahora</translation>
    </message>
    <message>
        <source>Flame out now</source>
        <comment>action.flame_out</comment>
        <translation>Apagar la llama</translation>
    </message>
    <message>
        <source>Glass</source>
        <comment>setting.glass</comment>
        <translation>Vidrio</translation>
    </message>
    <message>
        <source>What it is made of.</source>
        <comment>setting.glass.help</comment>
        <translation>De qué está hecho.</translation>
    </message>
    <message>
        <source>Borosilicate</source>
        <comment>choice.glass.borosilicate</comment>
        <translation>Borosilicato</translation>
    </message>
    <message>
        <source>Fused silica</source>
        <comment>choice.glass.fused-silica</comment>
        <translation>Sílice fundida</translation>
    </message>
    <message>
        <source>Lead crystal</source>
        <comment>choice.glass.lead-crystal</comment>
        <translation>Cristal de plomo</translation>
    </message>
    <message>
        <source>Soda lime</source>
        <comment>choice.glass.soda-lime</comment>
        <translation>Sodocálcico</translation>
    </message>
    <message>
        <source>Diameter</source>
        <comment>setting.outer_diameter_mm</comment>
        <translation>Diámetro</translation>
    </message>
    <message>
        <source>Outer diameter of the bottle's body.</source>
        <comment>setting.outer_diameter_mm.help</comment>
        <translation>Diámetro exterior del cuerpo de la botella.</translation>
    </message>
    <message>
        <source>Wall</source>
        <comment>setting.wall_mm</comment>
        <translation>Pared</translation>
    </message>
    <message>
        <source>Thickness of the wall.</source>
        <comment>setting.wall_mm.help</comment>
        <translation>Espesor de la pared.</translation>
    </message>
    <message>
        <source>Ring at</source>
        <comment>setting.ring_at_mm</comment>
        <translation>Anillo a</translation>
    </message>
    <message>
        <source>Height of the ring above the base.</source>
        <comment>setting.ring_at_mm.help</comment>
        <translation>Altura del anillo sobre la base.</translation>
    </message>
    <message>
        <source>Ring width</source>
        <comment>setting.ring_width_mm</comment>
        <translation>Ancho del anillo</translation>
    </message>
    <message>
        <source>Width of the flame at half its heat.</source>
        <comment>setting.ring_width_mm.help</comment>
        <translation>Anchura de la llama a la mitad de su calor.</translation>
    </message>
    <message>
        <source>Flame</source>
        <comment>setting.flame_kW_m2</comment>
        <translation>Llama</translation>
    </message>
    <message>
        <source>Heat into the ring, averaged over the turn.</source>
        <comment>setting.flame_kW_m2.help</comment>
        <translation>Calor al anillo, promediado en el giro.</translation>
    </message>
    <message>
        <source>Flame for</source>
        <comment>setting.heat_s</comment>
        <translation>Llama durante</translation>
    </message>
    <message>
        <source>When the flame goes out.</source>
        <comment>setting.heat_s.help</comment>
        <translation>Cuándo se apaga la llama.</translation>
    </message>
    <message>
        <source>Score</source>
        <comment>setting.score_depth_um</comment>
        <translation>Incisión</translation>
    </message>
    <message>
        <source>Depth of the scored line; 0: none.</source>
        <comment>setting.score_depth_um.help</comment>
        <translation>Profundidad de la línea marcada; 0: ninguna.</translation>
    </message>
    <message>
        <source>Score off by</source>
        <comment>setting.score_offset_mm</comment>
        <translation>Incisión desplazada</translation>
    </message>
    <message>
        <source>From the middle of the ring.</source>
        <comment>setting.score_offset_mm.help</comment>
        <translation>Desde el centro del anillo.</translation>
    </message>
    <message>
        <source>Drop of water</source>
        <comment>setting.drop</comment>
        <translation>Gota de agua</translation>
    </message>
    <message>
        <source>Whether a drop lands on the ring.</source>
        <comment>setting.drop.help</comment>
        <translation>Si cae una gota en el anillo.</translation>
    </message>
    <message>
        <source>Drop at</source>
        <comment>setting.drop_at_s</comment>
        <translation>Gota a los</translation>
    </message>
    <message>
        <source>When the drop lands.</source>
        <comment>setting.drop_at_s.help</comment>
        <translation>Cuándo cae la gota.</translation>
    </message>
    <message>
        <source>Drop off by</source>
        <comment>setting.drop_offset_mm</comment>
        <translation>Gota desplazada</translation>
    </message>
    <message>
        <source>From the middle of the ring.</source>
        <comment>setting.drop_offset_mm.help</comment>
        <translation>Desde el centro del anillo.</translation>
    </message>
    <message>
        <source>Hottest surface</source>
        <comment>reading.surface_peak_C</comment>
        <translation>Superficie más caliente</translation>
    </message>
    <message>
        <source>Largest over the run.</source>
        <comment>reading.surface_peak_C.help</comment>
        <translation>La mayor del proceso.</translation>
    </message>
    <message>
        <source>Swelling of the ring</source>
        <comment>reading.swell_um</comment>
        <translation>Dilatación del anillo</translation>
    </message>
    <message>
        <source>Outwards, at the middle of the ring.</source>
        <comment>reading.swell_um.help</comment>
        <translation>Hacia fuera, en el centro del anillo.</translation>
    </message>
    <message>
        <source>Along, outside</source>
        <comment>reading.axial_outside_MPa</comment>
        <translation>A lo largo, exterior</translation>
    </message>
    <message>
        <source>In the middle of the ring.</source>
        <comment>reading.axial_outside_MPa.help</comment>
        <translation>En el centro del anillo.</translation>
    </message>
    <message>
        <source>Along, inside</source>
        <comment>reading.axial_inside_MPa</comment>
        <translation>A lo largo, interior</translation>
    </message>
    <message>
        <source>In the middle of the ring.</source>
        <comment>reading.axial_inside_MPa.help</comment>
        <translation>En el centro del anillo.</translation>
    </message>
    <message>
        <source>Around, outside</source>
        <comment>reading.hoop_MPa</comment>
        <translation>Alrededor, exterior</translation>
    </message>
    <message>
        <source>In the middle of the ring.</source>
        <comment>reading.hoop_MPa.help</comment>
        <translation>En el centro del anillo.</translation>
    </message>
    <message>
        <source>Share of breaking</source>
        <comment>reading.intensity_ratio</comment>
        <translation>Parte de la rotura</translation>
    </message>
    <message>
        <source>K over K_IC of the stated flaw, at its peak.</source>
        <comment>reading.intensity_ratio.help</comment>
        <translation>K sobre K_IC del defecto indicado, en su máximo.</translation>
    </message>
    <message>
        <source>Cracks</source>
        <comment>reading.breaks</comment>
        <translation>Se agrieta</translation>
    </message>
    <message>
        <source>The verdict for the stated flaw.</source>
        <comment>reading.breaks.help</comment>
        <translation>El veredicto para el defecto indicado.</translation>
    </message>
    <message>
        <source>Cracked at</source>
        <comment>reading.break_at_s</comment>
        <translation>Agrietada a los</translation>
    </message>
    <message>
        <source>Crack's run</source>
        <comment>reading.crack_run_us</comment>
        <translation>Avance de la grieta</translation>
    </message>
    <message>
        <source>From the flaw through the wall.</source>
        <comment>reading.crack_run_us.help</comment>
        <translation>Del defecto a través de la pared.</translation>
    </message>
    <message>
        <source>Crack outside</source>
        <comment>reading.break_offset_mm</comment>
        <translation>Grieta exterior</translation>
    </message>
    <message>
        <source>Its distance from the ring's middle.</source>
        <comment>reading.break_offset_mm.help</comment>
        <translation>Su distancia al centro del anillo.</translation>
    </message>
    <message>
        <source>Crack inside</source>
        <comment>reading.break_inside_mm</comment>
        <translation>Grieta interior</translation>
    </message>
    <message>
        <source>Its distance from the ring's middle.</source>
        <comment>reading.break_inside_mm.help</comment>
        <translation>Su distancia al centro del anillo.</translation>
    </message>
    <message>
        <source>Odds of a crack</source>
        <comment>reading.break_probability</comment>
        <translation>Probabilidad de grieta</translation>
    </message>
    <message>
        <source>Over the spread of flaws.</source>
        <comment>reading.break_probability.help</comment>
        <translation>Según la dispersión de defectos.</translation>
    </message>
    <message>
        <source>Retardation peak</source>
        <comment>reading.retardation_peak_nm</comment>
        <translation>Retardo máximo</translation>
    </message>
    <message>
        <source>Largest over the run.</source>
        <comment>reading.retardation_peak_nm.help</comment>
        <translation>La mayor del proceso.</translation>
    </message>
    <message>
        <source>Ring outside</source>
        <comment>reading.surface_C</comment>
        <translation>Anillo, exterior</translation>
    </message>
    <message>
        <source>K over K_IC: a crack runs at 1.</source>
        <comment>reading.intensity_ratio.help</comment>
        <translation>K sobre K_IC: una grieta corre con 1.</translation>
    </message>
</context>
<context>
    <name>scene.touch</name>
    <message>
        <source>Warm touch</source>
        <comment>title</comment>
        <translation>Toque cálido</translation>
    </message>
    <message>
        <source>The plate is evenly cool and free of stress: between the polarizers it stays dark.</source>
        <comment>text.cold</comment>
        <translation>La placa está fría por igual y sin tensiones: entre los polarizadores sigue oscura.</translation>
    </message>
    <message>
        <source>The warm spot wants to grow, the cool glass around it holds it back: it is squeezed with {squeeze:.1f} MPa, and around it the glass is pulled with {pull:.1f} MPa.</source>
        <comment>text.warming</comment>
        <translation>La mancha caliente quiere crecer y el vidrio frío de alrededor la retiene: soporta {squeeze:.1f} MPa de compresión, y a su alrededor hay {pull:.1f} MPa de tracción.</translation>
    </message>
    <message>
        <source>The spot is {rise:.1f} °C warmer than the plate. With {nm:.0f} nm of retardation that is too faint to see unless the picture is brightened.</source>
        <comment>text.faint</comment>
        <translation>La mancha está {rise:.1f} °C más caliente que la placa. Con {nm:.0f} nm de retardo es demasiado tenue para verse sin aclarar la imagen.</translation>
    </message>
    <message>
        <source>The glass is pulled with {pull:.0f} MPa. An ordinary plate holds about {strength:.0f}: a real one may well crack here.</source>
        <comment>text.hard_pull</comment>
        <translation>El vidrio está a {pull:.0f} MPa de tracción. Una placa corriente aguanta unos {strength:.0f}: una real bien puede agrietarse aquí.</translation>
    </message>
    <message>
        <source>The tip is gone, but the picture stays: it is the warmth in the glass that you see, {rise:.0f} °C more than around it.</source>
        <comment>text.just_let_go</comment>
        <translation>La punta ya no está, pero la imagen queda: lo que se ve es el calor del vidrio, {rise:.0f} °C más que alrededor.</translation>
    </message>
    <message>
        <source>The warmth spreads, nothing pulls so hard any more, and the picture fades: it took {half:.0f} s to half.</source>
        <comment>text.fading</comment>
        <translation>El calor se reparte, nada tira ya con tanta fuerza y la imagen se desvanece: tardó {half:.0f} s en bajar a la mitad.</translation>
    </message>
    <message>
        <source>The plate is even again and the picture is dark: glass that only got warm keeps nothing.</source>
        <comment>text.gone</comment>
        <translation>La placa vuelve a estar uniforme y la imagen oscura: un vidrio que solo se calentó no guarda nada.</translation>
    </message>
    <message>
        <source>The crack is pulled open with {percent:.0f} % of what it needs to run.</source>
        <comment>text.crack_waits</comment>
        <translation>La grieta se abre con el {percent:.0f} % de lo que necesita para correr.</translation>
    </message>
    <message>
        <source>The crack has run to {length:.0f} mm and stopped: at its tip the glass is no longer pulled apart hard enough. What it cut through has let go of its stress.</source>
        <comment>text.crack_ran</comment>
        <translation>La grieta avanzó hasta {length:.0f} mm y se detuvo: en su punta ya no se tira con bastante fuerza. Lo que cortó ha perdido su tensión.</translation>
    </message>
    <message>
        <source>The crack ran all through the plate, {at:.1f} s after the start: two pieces, and nothing pulls across the cut any more.</source>
        <comment>text.parted</comment>
        <translation>La grieta atravesó toda la placa, {at:.1f} s después del inicio: dos piezas, y ya nada tira a través del corte.</translation>
    </message>
    <message>
        <source>Glass</source>
        <comment>setting.glass</comment>
        <translation>Vidrio</translation>
    </message>
    <message>
        <source>What it is made of.</source>
        <comment>setting.glass.help</comment>
        <translation>De qué está hecho.</translation>
    </message>
    <message>
        <source>Borosilicate</source>
        <comment>choice.glass.borosilicate</comment>
        <translation>Borosilicato</translation>
    </message>
    <message>
        <source>Fused silica</source>
        <comment>choice.glass.fused-silica</comment>
        <translation>Sílice fundida</translation>
    </message>
    <message>
        <source>Lead crystal</source>
        <comment>choice.glass.lead-crystal</comment>
        <translation>Cristal de plomo</translation>
    </message>
    <message>
        <source>Soda lime</source>
        <comment>choice.glass.soda-lime</comment>
        <translation>Sodocálcico</translation>
    </message>
    <message>
        <source>Thickness</source>
        <comment>setting.thickness_mm</comment>
        <translation>Espesor</translation>
    </message>
    <message>
        <source>Thickness of the plate.</source>
        <comment>setting.thickness_mm.help</comment>
        <translation>Espesor de la placa.</translation>
    </message>
    <message>
        <source>Spot</source>
        <comment>setting.spot_mm</comment>
        <translation>Mancha</translation>
    </message>
    <message>
        <source>Diameter within which 63 % of the heat falls.</source>
        <comment>setting.spot_mm.help</comment>
        <translation>Diámetro en que cae el 63 % del calor.</translation>
    </message>
    <message>
        <source>Power</source>
        <comment>setting.power_W</comment>
        <translation>Potencia</translation>
    </message>
    <message>
        <source>Heat of the warm tip, both faces together.</source>
        <comment>setting.power_W.help</comment>
        <translation>Calor de la punta, las dos caras juntas.</translation>
    </message>
    <message>
        <source>Touch for</source>
        <comment>setting.seconds</comment>
        <translation>Tocar durante</translation>
    </message>
    <message>
        <source>How long a tip nobody moves stays.</source>
        <comment>setting.seconds.help</comment>
        <translation>Cuánto queda una punta que nadie mueve.</translation>
    </message>
    <message>
        <source>Old crack</source>
        <comment>setting.crack_mm</comment>
        <translation>Grieta vieja</translation>
    </message>
    <message>
        <source>Length of a crack from the middle of the lower edge; 0: none.</source>
        <comment>setting.crack_mm.help</comment>
        <translation>Longitud de una grieta desde el centro del borde inferior; 0: ninguna.</translation>
    </message>
    <message>
        <source>Hottest place</source>
        <comment>reading.spot_C</comment>
        <translation>Lugar más caliente</translation>
    </message>
    <message>
        <source>Mean through the thickness; largest over the run.</source>
        <comment>reading.spot_C.help</comment>
        <translation>Media en el espesor; la mayor del proceso.</translation>
    </message>
    <message>
        <source>The crack runs</source>
        <comment>reading.crack_runs</comment>
        <translation>La grieta corre</translation>
    </message>
    <message>
        <source>Whether the old crack has grown.</source>
        <comment>reading.crack_runs.help</comment>
        <translation>Si la grieta vieja ha crecido.</translation>
    </message>
    <message>
        <source>Crack length</source>
        <comment>reading.crack_length_mm</comment>
        <translation>Longitud de la grieta</translation>
    </message>
    <message>
        <source>Where its tip is now.</source>
        <comment>reading.crack_length_mm.help</comment>
        <translation>Dónde está ahora su punta.</translation>
    </message>
    <message>
        <source>K over K_IC</source>
        <comment>reading.intensity_ratio</comment>
        <translation>K sobre K_IC</translation>
    </message>
    <message>
        <source>Of the crack, at its peak.</source>
        <comment>reading.intensity_ratio.help</comment>
        <translation>De la grieta, en su máximo.</translation>
    </message>
    <message>
        <source>Largest pull</source>
        <comment>reading.tension_MPa</comment>
        <translation>Mayor tracción</translation>
    </message>
    <message>
        <source>Over the run; without what a crack adds.</source>
        <comment>reading.tension_MPa.help</comment>
        <translation>En el proceso; sin lo que añade una grieta.</translation>
    </message>
    <message>
        <source>Largest squeeze</source>
        <comment>reading.compression_MPa</comment>
        <translation>Mayor compresión</translation>
    </message>
    <message>
        <source>Over the run; without a crack.</source>
        <comment>reading.compression_MPa.help</comment>
        <translation>En el proceso; sin grieta.</translation>
    </message>
    <message>
        <source>Retardation peak</source>
        <comment>reading.retardation_peak_nm</comment>
        <translation>Retardo máximo</translation>
    </message>
    <message>
        <source>Over the run; without a crack.</source>
        <comment>reading.retardation_peak_nm.help</comment>
        <translation>En el proceso; sin grieta.</translation>
    </message>
    <message>
        <source>Fades to half in</source>
        <comment>reading.fade_half_s</comment>
        <translation>Baja a la mitad en</translation>
    </message>
    <message>
        <source>Largest retardation, since it was let go.</source>
        <comment>reading.fade_half_s.help</comment>
        <translation>Mayor retardo desde que se soltó.</translation>
    </message>
    <message>
        <source>Retardation</source>
        <comment>reading.retardation_nm</comment>
        <translation>Retardo</translation>
    </message>
</context>
<context>
    <name>scene.toughen</name>
    <message>
        <source>Toughening</source>
        <comment>title</comment>
        <translation>Templado</translation>
    </message>
    <message>
        <source>The left plate is {start:.0f} °C hot and soft. It holds no stress, so it is dark.</source>
        <comment>text.hot</comment>
        <translation>La placa izquierda está a {start:.0f} °C, caliente y blanda. No guarda tensión, así que está oscura.</translation>
    </message>
    <message>
        <source>The jets cool the skin first. It wants to shrink, the soft inside lets it: a pull of only {pull:.1f} MPa.</source>
        <comment>text.skin</comment>
        <translation>Los chorros enfrían primero la piel. Quiere encoger y el interior blando la deja: solo {pull:.1f} MPa de tracción.</translation>
    </message>
    <message>
        <source>It was too cold to give way: the skin is pulled with {pull:.0f} MPa, and many a plate breaks in the jets.</source>
        <comment>text.brittle</comment>
        <translation>Estaba demasiado fría para ceder: la piel sufre {pull:.0f} MPa de tracción, y muchas placas se rompen en los chorros.</translation>
    </message>
    <message>
        <source>The skin is stiff, the middle still flows: the squeeze is being locked in.</source>
        <comment>text.locking</comment>
        <translation>La piel es rígida, el centro aún fluye: la compresión queda atrapada.</translation>
    </message>
    <message>
        <source>Now the middle shrinks too, and the stiff skin holds it: the skin is squeezed with {squeeze:.0f} MPa, the middle pulled with {pull:.0f} MPa.</source>
        <comment>text.shrinking</comment>
        <translation>Ahora encoge también el centro y la piel rígida lo retiene: piel a {squeeze:.0f} MPa de compresión, centro a {pull:.0f} MPa de tracción.</translation>
    </message>
    <message>
        <source>Cold, and toughened: skin squeezed with {squeeze:.0f} MPa. Any load must take that away first, so it bears {ratio:.1f} times as much.</source>
        <comment>text.toughened</comment>
        <translation>Fría y templada: piel a {squeeze:.0f} MPa de compresión. Toda carga debe vencerla primero, así que soporta {ratio:.1f} veces más.</translation>
    </message>
    <message>
        <source>Cold. The skin is squeezed with {squeeze:.0f} MPa, but it would break into {count:.0f} pieces where {asked:.0f} are asked: not toughened.</source>
        <comment>text.coarse</comment>
        <translation>Fría. La piel está a {squeeze:.0f} MPa de compresión, pero se rompería en {count:.0f} trozos donde se piden {asked:.0f}: no es templado.</translation>
    </message>
    <message>
        <source>Cold, and heat-strengthened: {squeeze:.0f} MPa of squeeze. Stronger than plain glass, but it will not break into dice.</source>
        <comment>text.heat-strengthened</comment>
        <translation>Fría y termoendurecida: {squeeze:.0f} MPa de compresión. Más resistente que un vidrio corriente, pero no se rompe en dados.</translation>
    </message>
    <message>
        <source>Cold, and hardly stronger than plain glass: {squeeze:.0f} MPa of squeeze.</source>
        <comment>text.annealed</comment>
        <translation>Fría y apenas más resistente que un vidrio corriente: {squeeze:.0f} MPa de compresión.</translation>
    </message>
    <message>
        <source>Both plates are about to be put to the test.</source>
        <comment>text.coming</comment>
        <translation>Las dos placas están a punto de ponerse a prueba.</translation>
    </message>
    <message>
        <source>Both are bent: {load:.0f} MPa at the face.</source>
        <comment>text.bending</comment>
        <translation>Las dos se doblan: {load:.0f} MPa en la cara.</translation>
    </message>
    <message>
        <source>Bent to {load:.0f} MPa, both hold.</source>
        <comment>text.none_bend</comment>
        <translation>Dobladas a {load:.0f} MPa, las dos aguantan.</translation>
    </message>
    <message>
        <source>Bent to {load:.0f} MPa: the plain plate is in {other} long shards, the blown one holds.</source>
        <comment>text.plain_bend</comment>
        <translation>Dobladas a {load:.0f} MPa: la placa corriente queda en {other} trozos largos, la soplada aguanta.</translation>
    </message>
    <message>
        <source>Bent to {load:.0f} MPa, both break: the plain plate into {other} long shards, the blown one into {pieces} pieces.</source>
        <comment>text.both_bend</comment>
        <translation>Dobladas a {load:.0f} MPa se rompen las dos: la corriente en {other} trozos largos, la soplada en {pieces} trozos.</translation>
    </message>
    <message>
        <source>Bent to {load:.0f} MPa, both break into long shards: the plain plate into {other}, the blown one into {pieces}. It holds too little energy for dice.</source>
        <comment>text.alike_bend</comment>
        <translation>Dobladas a {load:.0f} MPa, las dos se rompen en trozos largos: la corriente en {other}, la soplada en {pieces}. Guarda muy poca energía para hacer dados.</translation>
    </message>
    <message>
        <source>Bent to {load:.0f} MPa: the blown plate is in {pieces} pieces, the other holds.</source>
        <comment>text.blown_bend</comment>
        <translation>Dobladas a {load:.0f} MPa: la placa soplada queda en {pieces} trozos, la otra aguanta.</translation>
    </message>
    <message>
        <source>A blow of {blow:.1f} J, and both hold.</source>
        <comment>text.none_hit</comment>
        <translation>Un golpe de {blow:.1f} J, y las dos aguantan.</translation>
    </message>
    <message>
        <source>A blow of {blow:.1f} J: the plain plate is in {other} long shards, the blown one holds. It would take {limit:.1f} J.</source>
        <comment>text.plain_hit</comment>
        <translation>Un golpe de {blow:.1f} J: la placa corriente queda en {other} trozos largos, la soplada aguanta. Harían falta {limit:.1f} J.</translation>
    </message>
    <message>
        <source>A blow of {blow:.1f} J breaks both: the plain plate into {other} long shards, the blown one into {pieces} small pieces.</source>
        <comment>text.both_hit</comment>
        <translation>Un golpe de {blow:.1f} J rompe las dos: la placa corriente en {other} trozos largos, la soplada en {pieces} trozos pequeños.</translation>
    </message>
    <message>
        <source>A blow of {blow:.1f} J breaks both into long shards: the plain plate into {other}, the blown one into {pieces}. It holds too little energy for dice.</source>
        <comment>text.alike_hit</comment>
        <translation>Un golpe de {blow:.1f} J rompe las dos en trozos largos: la corriente en {other}, la soplada en {pieces}. Guarda muy poca energía para hacer dados.</translation>
    </message>
    <message>
        <source>A blow of {blow:.1f} J: the blown plate is in {pieces} pieces, the other holds.</source>
        <comment>text.blown_hit</comment>
        <translation>Un golpe de {blow:.1f} J: la placa soplada queda en {pieces} trozos, la otra aguanta.</translation>
    </message>
    <message>
        <source>The laminated plate has cracked, but its film holds {held:.0f} % of the glass and {carried:.0f} % of the load.</source>
        <comment>text.film_bend</comment>
        <translation>La placa laminada se ha agrietado, pero su lámina retiene el {held:.0f} % del vidrio y el {carried:.0f} % de la carga.</translation>
    </message>
    <message>
        <source>The laminated plate has cracked, but its film holds {held:.0f} % of the glass, and it carries {carried:.0f} % of its load.</source>
        <comment>text.film_hit</comment>
        <translation>La placa laminada se ha agrietado, pero su lámina retiene el {held:.0f} % del vidrio, y soporta el {carried:.0f} % de su carga.</translation>
    </message>
    <message>
        <source>One cut reaches the pull inside, and all of it lets go: {pieces} small pieces. The plain plate is cut in two.</source>
        <comment>text.cut_dices</comment>
        <translation>Un corte alcanza la tracción interior y todo se suelta: {pieces} trozos pequeños. La placa corriente queda cortada en dos.</translation>
    </message>
    <message>
        <source>There is too little energy inside to drive a crack: the cut parts both plates neatly in two.</source>
        <comment>text.cut_parts</comment>
        <translation>Dentro hay muy poca energía para impulsar una grieta: el corte separa limpiamente en dos ambas placas.</translation>
    </message>
    <message>
        <source>{ground:.1f} mm are off one face. The squeeze that is gone no longer balances the other side: off the table, the plate will curl.</source>
        <comment>text.grinding</comment>
        <translation>Faltan {ground:.1f} mm de una cara. La compresión perdida ya no equilibra el otro lado: al levantarla de la mesa, la placa se curvará.</translation>
    </message>
    <message>
        <source>{ground:.1f} mm off, the wheel has met the pull inside: the plate lets go and breaks into {pieces} pieces.</source>
        <comment>text.ground_dices</comment>
        <translation>Con {ground:.1f} mm menos, la muela ha dado con la tracción interior: la placa se suelta y se rompe en {pieces} trozos.</translation>
    </message>
    <message>
        <source>{ground:.1f} mm are off, and it still holds: it would break at {limit:.1f} mm. Lifted off the table it curls, like an arc of {radius:.1f} m radius.</source>
        <comment>text.ground</comment>
        <translation>Faltan {ground:.1f} mm y aún aguanta: se rompería a {limit:.1f} mm. Levantada de la mesa se curva como un arco de {radius:.1f} m de radio.</translation>
    </message>
    <message>
        <source>{ground:.1f} mm are off one face, and it only curls: there is too little pull inside to let it go.</source>
        <comment>text.ground_weak</comment>
        <translation>Faltan {ground:.1f} mm de una cara y solo se curva: dentro hay muy poca tracción para soltarla.</translation>
    </message>
    <message>
        <source>depth</source>
        <comment>text.depth</comment>
        <translation>profundidad</translation>
    </message>
    <message>
        <source>stress</source>
        <comment>text.stress</comment>
        <translation>tensión</translation>
    </message>
    <message>
        <source>blown plate</source>
        <comment>text.blown</comment>
        <translation>placa soplada</translation>
    </message>
    <message>
        <source>plain plate</source>
        <comment>text.plain</comment>
        <translation>placa corriente</translation>
    </message>
    <message>
        <source>laminated plate</source>
        <comment>text.laminated</comment>
        <translation>placa laminada</translation>
    </message>
    <message>
        <source>toughened</source>
        <comment>text.limit_toughened</comment>
        <translation>templado</translation>
    </message>
    <message>
        <source>heat-strengthened</source>
        <comment>text.limit_strengthened</comment>
        <translation>termoendurecido</translation>
    </message>
    <message>
        <source>along the plate</source>
        <comment>text.along</comment>
        <translation>a lo largo de la placa</translation>
    </message>
    <message>
        <source>Hit both</source>
        <comment>action.hit_now</comment>
        <translation>Golpear las dos</translation>
    </message>
    <message>
        <source>Bend both</source>
        <comment>action.bend_now</comment>
        <translation>Doblar las dos</translation>
    </message>
    <message>
        <source>Cut both</source>
        <comment>action.cut_now</comment>
        <translation>Cortar las dos</translation>
    </message>
    <message>
        <source>Grind one face</source>
        <comment>action.grind_now</comment>
        <translation>Esmerilar una cara</translation>
    </message>
    <message>
        <source>Glass</source>
        <comment>setting.glass</comment>
        <translation>Vidrio</translation>
    </message>
    <message>
        <source>What both are made of.</source>
        <comment>setting.glass.help</comment>
        <translation>De qué están hechas las dos.</translation>
    </message>
    <message>
        <source>Borosilicate</source>
        <comment>choice.glass.borosilicate</comment>
        <translation>Borosilicato</translation>
    </message>
    <message>
        <source>Fused silica</source>
        <comment>choice.glass.fused-silica</comment>
        <translation>Sílice fundida</translation>
    </message>
    <message>
        <source>Lead crystal</source>
        <comment>choice.glass.lead-crystal</comment>
        <translation>Cristal de plomo</translation>
    </message>
    <message>
        <source>Soda lime</source>
        <comment>choice.glass.soda-lime</comment>
        <translation>Sodocálcico</translation>
    </message>
    <message>
        <source>Thickness</source>
        <comment>setting.thickness_mm</comment>
        <translation>Espesor</translation>
    </message>
    <message>
        <source>Thickness of both plates.</source>
        <comment>setting.thickness_mm.help</comment>
        <translation>Espesor de las dos placas.</translation>
    </message>
    <message>
        <source>Start</source>
        <comment>setting.start_C</comment>
        <translation>Inicio</translation>
    </message>
    <message>
        <source>Heat when the jets start.</source>
        <comment>setting.start_C.help</comment>
        <translation>Temperatura al empezar los chorros.</translation>
    </message>
    <message>
        <source>Jets</source>
        <comment>setting.jet_W_m2K</comment>
        <translation>Chorros</translation>
    </message>
    <message>
        <source>15: hardly more than still air.</source>
        <comment>setting.jet_W_m2K.help</comment>
        <translation>15: apenas más que aire quieto.</translation>
    </message>
    <message>
        <source>Uneven by</source>
        <comment>setting.jet_unevenness_pct</comment>
        <translation>Desigual en</translation>
    </message>
    <message>
        <source>How much stronger a jet's middle cools.</source>
        <comment>setting.jet_unevenness_pct.help</comment>
        <translation>Cuánto más enfría el centro de un chorro.</translation>
    </message>
    <message>
        <source>Beside it</source>
        <comment>setting.beside</comment>
        <translation>Al lado</translation>
    </message>
    <message>
        <source>The other plate: never toughened.</source>
        <comment>setting.beside.help</comment>
        <translation>La otra placa: nunca templada.</translation>
    </message>
    <message>
        <source>Plain</source>
        <comment>choice.beside.plain</comment>
        <translation>Corriente</translation>
    </message>
    <message>
        <source>Laminated</source>
        <comment>choice.beside.laminated</comment>
        <translation>Laminado</translation>
    </message>
    <message>
        <source>Then</source>
        <comment>setting.then</comment>
        <translation>Después</translation>
    </message>
    <message>
        <source>What is done to both once they are cold.</source>
        <comment>setting.then.help</comment>
        <translation>Qué se les hace a las dos una vez frías.</translation>
    </message>
    <message>
        <source>Nothing</source>
        <comment>choice.then.nothing</comment>
        <translation>Nada</translation>
    </message>
    <message>
        <source>Hit</source>
        <comment>choice.then.hit</comment>
        <translation>Golpear</translation>
    </message>
    <message>
        <source>Bend</source>
        <comment>choice.then.bend</comment>
        <translation>Doblar</translation>
    </message>
    <message>
        <source>Cut</source>
        <comment>choice.then.cut</comment>
        <translation>Cortar</translation>
    </message>
    <message>
        <source>Grind one face</source>
        <comment>choice.then.grind_one_face</comment>
        <translation>Esmerilar una cara</translation>
    </message>
    <message>
        <source>Then at</source>
        <comment>setting.act_at_s</comment>
        <translation>Después, a los</translation>
    </message>
    <message>
        <source>0: as soon as it is cold.</source>
        <comment>setting.act_at_s.help</comment>
        <translation>0: en cuanto esté fría.</translation>
    </message>
    <message>
        <source>Blow</source>
        <comment>setting.blow_J</comment>
        <translation>Golpe</translation>
    </message>
    <message>
        <source>Energy of a blunt blow.</source>
        <comment>setting.blow_J.help</comment>
        <translation>Energía de un golpe romo.</translation>
    </message>
    <message>
        <source>Bend to</source>
        <comment>setting.bend_MPa</comment>
        <translation>Doblar hasta</translation>
    </message>
    <message>
        <source>Pull at the face if it were one plain plate.</source>
        <comment>setting.bend_MPa.help</comment>
        <translation>Tracción en la cara si fuera una sola placa corriente.</translation>
    </message>
    <message>
        <source>Grind off</source>
        <comment>setting.grind_mm</comment>
        <translation>Rebajar</translation>
    </message>
    <message>
        <source>Taken off one face, held flat; then let go.</source>
        <comment>setting.grind_mm.help</comment>
        <translation>De una cara, sujeta plana; luego se suelta.</translation>
    </message>
    <message>
        <source>Surface</source>
        <comment>reading.surface_MPa</comment>
        <translation>Superficie</translation>
    </message>
    <message>
        <source>Of the blown plate.</source>
        <comment>reading.surface_MPa.help</comment>
        <translation>De la placa soplada.</translation>
    </message>
    <message>
        <source>Middle</source>
        <comment>reading.centre_MPa</comment>
        <translation>Centro</translation>
    </message>
    <message>
        <source>Of the blown plate.</source>
        <comment>reading.centre_MPa.help</comment>
        <translation>De la placa soplada.</translation>
    </message>
    <message>
        <source>No stress at</source>
        <comment>reading.neutral_depth_mm</comment>
        <translation>Sin tensión a</translation>
    </message>
    <message>
        <source>Depth below the surface.</source>
        <comment>reading.neutral_depth_mm.help</comment>
        <translation>Profundidad bajo la superficie.</translation>
    </message>
    <message>
        <source>Bending strength</source>
        <comment>reading.bending_strength_MPa</comment>
        <translation>Resistencia a flexión</translation>
    </message>
    <message>
        <source>New glass, short load.</source>
        <comment>reading.bending_strength_MPa.help</comment>
        <translation>Vidrio nuevo, carga breve.</translation>
    </message>
    <message>
        <source>Times as strong</source>
        <comment>reading.strength_ratio</comment>
        <translation>Veces más resistente</translation>
    </message>
    <message>
        <source>Used glass, a load that stays 30 minutes.</source>
        <comment>reading.strength_ratio.help</comment>
        <translation>Vidrio usado, carga de 30 minutos.</translation>
    </message>
    <message>
        <source>Times as strong, new</source>
        <comment>reading.strength_ratio_new</comment>
        <translation>Veces más resistente, nuevo</translation>
    </message>
    <message>
        <source>New glass, a load of 5 seconds.</source>
        <comment>reading.strength_ratio_new.help</comment>
        <translation>Vidrio nuevo, carga de 5 segundos.</translation>
    </message>
    <message>
        <source>Blow to break</source>
        <comment>reading.blow_to_break_J</comment>
        <translation>Golpe para romper</translation>
    </message>
    <message>
        <source>Half of used plates break.</source>
        <comment>reading.blow_to_break_J.help</comment>
        <translation>Se rompe la mitad de las placas usadas.</translation>
    </message>
    <message>
        <source>Blow to break, other</source>
        <comment>reading.blow_to_break_beside_J</comment>
        <translation>Golpe para romper, la otra</translation>
    </message>
    <message>
        <source>Half of used plates break.</source>
        <comment>reading.blow_to_break_beside_J.help</comment>
        <translation>Se rompe la mitad de las placas usadas.</translation>
    </message>
    <message>
        <source>Particles</source>
        <comment>reading.particles_50mm</comment>
        <translation>Fragmentos</translation>
    </message>
    <message>
        <source>In 50 mm by 50 mm, from the energy.</source>
        <comment>reading.particles_50mm.help</comment>
        <translation>En 50 mm por 50 mm, según la energía.</translation>
    </message>
    <message>
        <source>Particles asked</source>
        <comment>reading.particles_asked</comment>
        <translation>Fragmentos exigidos</translation>
    </message>
    <message>
        <source>By EN 12150-1 for this thickness.</source>
        <comment>reading.particles_asked.help</comment>
        <translation>Según EN 12150-1 para este espesor.</translation>
    </message>
    <message>
        <source>Grade</source>
        <comment>reading.grade</comment>
        <translation>Categoría</translation>
    </message>
    <message>
        <source>The worse of surface compression and particle count.</source>
        <comment>reading.grade.help</comment>
        <translation>Lo peor entre compresión superficial y número de fragmentos.</translation>
    </message>
    <message>
        <source>annealed</source>
        <comment>value.grade.annealed</comment>
        <translation>recocido</translation>
    </message>
    <message>
        <source>heat-strengthened</source>
        <comment>value.grade.heat-strengthened</comment>
        <translation>termoendurecido</translation>
    </message>
    <message>
        <source>toughened</source>
        <comment>value.grade.toughened</comment>
        <translation>templado</translation>
    </message>
    <message>
        <source>Grade limited by</source>
        <comment>reading.grade_limited_by</comment>
        <translation>Categoría limitada por</translation>
    </message>
    <message>
        <source>nothing</source>
        <comment>value.grade_limited_by.nothing</comment>
        <translation>nada</translation>
    </message>
    <message>
        <source>surface compression</source>
        <comment>value.grade_limited_by.surface compression</comment>
        <translation>compresión superficial</translation>
    </message>
    <message>
        <source>particle count</source>
        <comment>value.grade_limited_by.particle count</comment>
        <translation>número de fragmentos</translation>
    </message>
    <message>
        <source>both</source>
        <comment>value.grade_limited_by.both</comment>
        <translation>ambas</translation>
    </message>
    <message>
        <source>A crack runs by itself</source>
        <comment>reading.runs_by_itself</comment>
        <translation>Una grieta corre sola</translation>
    </message>
    <message>
        <source>Driven by the energy inside.</source>
        <comment>reading.runs_by_itself.help</comment>
        <translation>Impulsada por la energía interior.</translation>
    </message>
    <message>
        <source>Energy inside</source>
        <comment>reading.energy_J_m2</comment>
        <translation>Energía interior</translation>
    </message>
    <message>
        <source>Pull in the jets</source>
        <comment>reading.quench_pull_MPa</comment>
        <translation>Tracción en los chorros</translation>
    </message>
    <message>
        <source>Largest at the surface.</source>
        <comment>reading.quench_pull_MPa.help</comment>
        <translation>La mayor en la superficie.</translation>
    </message>
    <message>
        <source>Odds of a break in the jets</source>
        <comment>reading.quench_break_probability</comment>
        <translation>Probabilidad de rotura en los chorros</translation>
    </message>
    <message>
        <source>New glass.</source>
        <comment>reading.quench_break_probability.help</comment>
        <translation>Vidrio nuevo.</translation>
    </message>
    <message>
        <source>Sudden chill it bears</source>
        <comment>reading.shock_K</comment>
        <translation>Choque frío que soporta</translation>
    </message>
    <message>
        <source>By the model: new glass, held fast.</source>
        <comment>reading.shock_K.help</comment>
        <translation>Según el modelo: vidrio nuevo, sujeto.</translation>
    </message>
    <message>
        <source>Sudden chill, plain</source>
        <comment>reading.shock_plain_K</comment>
        <translation>Choque frío, corriente</translation>
    </message>
    <message>
        <source>By the model: new glass, held fast.</source>
        <comment>reading.shock_plain_K.help</comment>
        <translation>Según el modelo: vidrio nuevo, sujeto.</translation>
    </message>
    <message>
        <source>Sudden chill, standard</source>
        <comment>reading.shock_standard_K</comment>
        <translation>Choque frío, norma</translation>
    </message>
    <message>
        <source>For the grade.</source>
        <comment>reading.shock_standard_K.help</comment>
        <translation>Para la categoría.</translation>
    </message>
    <message>
        <source>Sudden chill, standard, plain</source>
        <comment>reading.shock_standard_plain_K</comment>
        <translation>Choque frío, norma, corriente</translation>
    </message>
    <message>
        <source>Breaks</source>
        <comment>reading.breaks</comment>
        <translation>Se rompe</translation>
    </message>
    <message>
        <source>The blown plate, with middling flaws.</source>
        <comment>reading.breaks.help</comment>
        <translation>La placa soplada, con defectos medianos.</translation>
    </message>
    <message>
        <source>Broke at</source>
        <comment>reading.break_at_s</comment>
        <translation>Se rompió a los</translation>
    </message>
    <message>
        <source>Odds of a break</source>
        <comment>reading.break_probability</comment>
        <translation>Probabilidad de rotura</translation>
    </message>
    <message>
        <source>Of the blown plate, used.</source>
        <comment>reading.break_probability.help</comment>
        <translation>De la placa soplada, usada.</translation>
    </message>
    <message>
        <source>Pieces</source>
        <comment>reading.pieces</comment>
        <translation>Trozos</translation>
    </message>
    <message>
        <source>Of the blown plate; those under 3 mm are drawn as 3.</source>
        <comment>reading.pieces.help</comment>
        <translation>De la placa soplada; los menores de 3 mm se dibujan de 3.</translation>
    </message>
    <message>
        <source>Other breaks</source>
        <comment>reading.breaks_beside</comment>
        <translation>La otra se rompe</translation>
    </message>
    <message>
        <source>Odds of a break, other</source>
        <comment>reading.break_probability_beside</comment>
        <translation>Probabilidad de rotura, la otra</translation>
    </message>
    <message>
        <source>Used.</source>
        <comment>reading.break_probability_beside.help</comment>
        <translation>Usada.</translation>
    </message>
    <message>
        <source>Pieces, other</source>
        <comment>reading.pieces_beside</comment>
        <translation>Trozos, la otra</translation>
    </message>
    <message>
        <source>Load after cracking</source>
        <comment>reading.laminated_load_pct</comment>
        <translation>Carga tras agrietarse</translation>
    </message>
    <message>
        <source>Of the load that cracked it.</source>
        <comment>reading.laminated_load_pct.help</comment>
        <translation>De la carga que la agrietó.</translation>
    </message>
    <message>
        <source>Glass held</source>
        <comment>reading.laminated_held_pct</comment>
        <translation>Vidrio retenido</translation>
    </message>
    <message>
        <source>By the film, after cracking.</source>
        <comment>reading.laminated_held_pct.help</comment>
        <translation>Por la lámina, tras agrietarse.</translation>
    </message>
    <message>
        <source>Ground off</source>
        <comment>reading.ground_mm</comment>
        <translation>Rebajado</translation>
    </message>
    <message>
        <source>Lets go at</source>
        <comment>reading.lets_go_mm</comment>
        <translation>Se suelta a</translation>
    </message>
    <message>
        <source>Ground off one face.</source>
        <comment>reading.lets_go_mm.help</comment>
        <translation>Rebajado de una cara.</translation>
    </message>
    <message>
        <source>Curl</source>
        <comment>reading.curl_per_m</comment>
        <translation>Curvatura</translation>
    </message>
    <message>
        <source>Curvature once it is let go.</source>
        <comment>reading.curl_per_m.help</comment>
        <translation>Curvatura una vez suelta.</translation>
    </message>
    <message>
        <source>Retardation peak</source>
        <comment>reading.retardation_peak_nm</comment>
        <translation>Retardo máximo</translation>
    </message>
    <message>
        <source>Edge-on, in 5 mm of glass.</source>
        <comment>reading.retardation_peak_nm.help</comment>
        <translation>De canto, en 5 mm de vidrio.</translation>
    </message>
    <message>
        <source>Surface</source>
        <comment>reading.surface_C</comment>
        <translation>Superficie</translation>
    </message>
    <message>
        <source>Middle</source>
        <comment>reading.centre_C</comment>
        <translation>Centro</translation>
    </message>
</context>
<context>
    <name>describe</name>
    <message>
        <source>The picture is brightened {gain:g} times.</source>
        <comment>light.gain</comment>
        <translation>La imagen está aclarada {gain:g} veces.</translation>
    </message>
    <message>
        <source>Both polarizing filters are out, so no stress can show.</source>
        <comment>light.none</comment>
        <translation>Los dos filtros polarizadores están fuera: no puede verse ninguna tensión.</translation>
    </message>
    <message>
        <source>One polarizing filter is out, so no stress can show.</source>
        <comment>light.one</comment>
        <translation>Un filtro polarizador está fuera: no puede verse ninguna tensión.</translation>
    </message>
    <message>
        <source>The tint plate is in: what has no stress looks {bare}, and stress changes that colour.</source>
        <comment>light.tint</comment>
        <translation>La lámina de onda está puesta: lo que no tiene tensión se ve de color {bare}, y la tensión cambia ese color.</translation>
    </message>
    <message>
        <source>The polarizers stand parallel: what has no stress is bright, and stress darkens it.</source>
        <comment>light.parallel</comment>
        <translation>Los polarizadores están en paralelo: lo que no tiene tensión brilla, y la tensión lo oscurece.</translation>
    </message>
    <message>
        <source>The polarizers stand neither crossed nor parallel: what has no stress looks {bare}.</source>
        <comment>light.turned</comment>
        <translation>Los polarizadores no están ni cruzados ni en paralelo: lo que no tiene tensión se ve de color {bare}.</translation>
    </message>
    <message>
        <source>The lamp gives {lamp} light only, so bands show and other colours do not.</source>
        <comment>light.lamp</comment>
        <translation>La lámpara solo da luz de color {lamp}: se ven bandas, pero no otros colores.</translation>
    </message>
    <message>
        <source>The piece is all dark: no stress shows anywhere.</source>
        <comment>all_dark</comment>
        <translation>La pieza está toda oscura: no se ve tensión en ningún lugar.</translation>
    </message>
    <message>
        <source>The piece looks like the empty field around it, {colour}: no stress shows.</source>
        <comment>all_alike</comment>
        <translation>La pieza se ve como el campo vacío que la rodea, de color {colour}: no se ve tensión.</translation>
    </message>
    <message>
        <source>The piece is evenly {colour}, from edge to edge.</source>
        <comment>even</comment>
        <translation>La pieza se ve de color {colour} uniforme, de borde a borde.</translation>
    </message>
    <message>
        <source>The piece is almost dark; a faint light shows {bright}.</source>
        <comment>faint</comment>
        <translation>La pieza está casi oscura; una luz débil asoma {bright}.</translation>
    </message>
    <message>
        <source>The one {place} is almost dark; a faint light shows {bright}.</source>
        <comment>brightest_faint</comment>
        <translation>La pieza situada {place} está casi oscura; una luz débil asoma {bright}.</translation>
    </message>
    <message>
        <source>It is {level} along the upper and lower edges, with a dark line along the middle.</source>
        <comment>dark_line</comment>
        <translation>Se ve {level} en los bordes superior e inferior, con una línea oscura a lo largo del centro.</translation>
    </message>
    <message>
        <source>The one {place} is {level} along both edges, with a dark line along the middle.</source>
        <comment>brightest_dark_line</comment>
        <translation>La pieza situada {place} se ve {level} a lo largo de ambos bordes, con una línea oscura a lo largo del centro.</translation>
    </message>
    <message>
        <source>It is {level} {bright} and darker {dark}.</source>
        <comment>one_place</comment>
        <translation>Se ve {level} {bright} y más oscura {dark}.</translation>
    </message>
    <message>
        <source>Light and dark patches alternate; the brightest is {bright}.</source>
        <comment>patches</comment>
        <translation>Alternan zonas claras y oscuras; la más brillante es de color {bright}.</translation>
    </message>
    <message>
        <source>{count} pieces; light shows {places}.</source>
        <comment>several</comment>
        <translation>{count} piezas; se ve luz {places}.</translation>
    </message>
    <message>
        <source>{count} pieces, and all of them are dark: no stress shows.</source>
        <comment>several_dark</comment>
        <translation>{count} piezas, y todas están oscuras: no se ve tensión.</translation>
    </message>
    <message>
        <source>The one {place} is {level} {bright} and darker {dark}.</source>
        <comment>brightest</comment>
        <translation>La pieza situada {place} se ve {level} {bright} y más oscura {dark}.</translation>
    </message>
    <message>
        <source>The one {place} has light and dark patches, brightest {bright}.</source>
        <comment>brightest_patches</comment>
        <translation>La situada {place} alterna zonas claras y oscuras; las más claras: {bright}.</translation>
    </message>
    <message>
        <source>The one {place} is evenly {colour}.</source>
        <comment>brightest_even</comment>
        <translation>La situada {place} es de color {colour} uniforme.</translation>
    </message>
    <message>
        <source>There are no separate bands; the light is {colours}.</source>
        <comment>no_bands</comment>
        <translation>No hay bandas separadas; colores de la luz: {colours}.</translation>
    </message>
    <message>
        <source>One bright band runs {way}; the light is {colours}.</source>
        <comment>band</comment>
        <translation>Una banda clara corre {way}; colores de la luz: {colours}.</translation>
    </message>
    <message>
        <source>{count} bright bands run {way}; the light is {colours}.</source>
        <comment>bands</comment>
        <translation>{count} bandas claras corren {way}; colores de la luz: {colours}.</translation>
    </message>
    <message>
        <source>The piece has become brighter than a moment ago: stress grows.</source>
        <comment>grows</comment>
        <translation>La pieza brilla más que hace un momento: la tensión crece.</translation>
    </message>
    <message>
        <source>The piece has become darker than a moment ago: stress fades.</source>
        <comment>fades</comment>
        <translation>La pieza brilla menos que hace un momento: la tensión disminuye.</translation>
    </message>
    <message>
        <source>As bright as a moment ago, but the pattern has moved.</source>
        <comment>moves</comment>
        <translation>Igual de clara que hace un momento, pero el dibujo se ha movido.</translation>
    </message>
    <message>
        <source>Nothing has changed since a moment ago.</source>
        <comment>stays</comment>
        <translation>Nada ha cambiado desde hace un momento.</translation>
    </message>
    <message>
        <source>The picture has become brighter than a moment ago.</source>
        <comment>brighter</comment>
        <translation>La imagen se ha vuelto más clara que hace un momento.</translation>
    </message>
    <message>
        <source>The picture has become darker than a moment ago.</source>
        <comment>darker</comment>
        <translation>La imagen se ha vuelto más oscura que hace un momento.</translation>
    </message>
    <message>
        <source>A crack shows {place}.</source>
        <comment>crack</comment>
        <translation>Se ve una grieta {place}.</translation>
    </message>
    <message>
        <source>The piece is broken; thin lines show the edges of its fragments.</source>
        <comment>shards</comment>
        <translation>La pieza está rota; líneas finas muestran los bordes de sus fragmentos.</translation>
    </message>
    <message>
        <source>The cut shows pull {pulled}, {pull:.0f} MPa at most, and squeeze {squeezed}, {squeeze:.0f} MPa at most.</source>
        <comment>section</comment>
        <translation>El corte muestra tracción {pulled}, {pull:.0f} MPa como máximo, y compresión {squeezed}, {squeeze:.0f} MPa como máximo.</translation>
    </message>
    <message>
        <source>The cut shows pull, {pull:.0f} MPa at most, close beside squeeze, {squeeze:.0f} MPa at most, {pulled}.</source>
        <comment>section.close</comment>
        <translation>El corte muestra tracción, {pull:.0f} MPa como máximo, muy cerca de compresión, {squeeze:.0f} MPa como máximo, {pulled}.</translation>
    </message>
    <message>
        <source>The cut shows pull {pulled}, {pull:.0f} MPa at most.</source>
        <comment>section.pull</comment>
        <translation>El corte muestra tracción {pulled}, {pull:.0f} MPa como máximo.</translation>
    </message>
    <message>
        <source>The cut shows squeeze {squeezed}, {squeeze:.0f} MPa at most.</source>
        <comment>section.squeeze</comment>
        <translation>El corte muestra compresión {squeezed}, {squeeze:.0f} MPa como máximo.</translation>
    </message>
    <message>
        <source>Arrows mark pull {pulled} and squeeze {squeezed}.</source>
        <comment>arrows</comment>
        <translation>Las flechas indican tracción {pulled} y compresión {squeezed}.</translation>
    </message>
    <message>
        <source>bright</source>
        <comment>level.bright</comment>
        <translation>brillante</translation>
    </message>
    <message>
        <source>dimly lit</source>
        <comment>level.dim</comment>
        <translation>tenue</translation>
    </message>
    <message>
        <source>along the upper and lower edges</source>
        <comment>place.both_edges</comment>
        <translation>a lo largo de los bordes superior e inferior</translation>
    </message>
    <message>
        <source>along the upper edge</source>
        <comment>place.top</comment>
        <translation>a lo largo del borde superior</translation>
    </message>
    <message>
        <source>along the lower edge</source>
        <comment>place.bottom</comment>
        <translation>a lo largo del borde inferior</translation>
    </message>
    <message>
        <source>along the middle</source>
        <comment>place.middle</comment>
        <translation>a lo largo del centro</translation>
    </message>
    <message>
        <source>at both ends</source>
        <comment>place.both_ends</comment>
        <translation>en los dos extremos</translation>
    </message>
    <message>
        <source>at the left end</source>
        <comment>place.left</comment>
        <translation>en el extremo izquierdo</translation>
    </message>
    <message>
        <source>at the right end</source>
        <comment>place.right</comment>
        <translation>en el extremo derecho</translation>
    </message>
    <message>
        <source>in the centre</source>
        <comment>place.centre</comment>
        <translation>en el centro</translation>
    </message>
    <message>
        <source>half way between the ends</source>
        <comment>place.across</comment>
        <translation>a media distancia de los extremos</translation>
    </message>
    <message>
        <source>near the heated ring</source>
        <comment>place.ring</comment>
        <translation>cerca del anillo caliente</translation>
    </message>
    <message>
        <source>all round the rim</source>
        <comment>place.rim</comment>
        <translation>todo alrededor del borde</translation>
    </message>
    <message>
        <source>at the upper left</source>
        <comment>spot.0.0</comment>
        <translation>arriba a la izquierda</translation>
    </message>
    <message>
        <source>at the top</source>
        <comment>spot.1.0</comment>
        <translation>arriba</translation>
    </message>
    <message>
        <source>at the upper right</source>
        <comment>spot.2.0</comment>
        <translation>arriba a la derecha</translation>
    </message>
    <message>
        <source>on the left</source>
        <comment>spot.0.1</comment>
        <translation>a la izquierda</translation>
    </message>
    <message>
        <source>in the middle</source>
        <comment>spot.1.1</comment>
        <translation>en el medio</translation>
    </message>
    <message>
        <source>on the right</source>
        <comment>spot.2.1</comment>
        <translation>a la derecha</translation>
    </message>
    <message>
        <source>at the lower left</source>
        <comment>spot.0.2</comment>
        <translation>abajo a la izquierda</translation>
    </message>
    <message>
        <source>at the bottom</source>
        <comment>spot.1.2</comment>
        <translation>abajo</translation>
    </message>
    <message>
        <source>at the lower right</source>
        <comment>spot.2.2</comment>
        <translation>abajo a la derecha</translation>
    </message>
    <message>
        <source>from left to right</source>
        <comment>way.lengthwise</comment>
        <translation>de izquierda a derecha</translation>
    </message>
    <message>
        <source>from top to bottom</source>
        <comment>way.upright</comment>
        <translation>de arriba abajo</translation>
    </message>
    <message>
        <source>{first}, {last}</source>
        <comment>list</comment>
        <translation>{first}, {last}</translation>
    </message>
    <message>
        <source>{first} and {last}</source>
        <comment>list.last</comment>
        <translation>{first} y {last}</translation>
    </message>
    <message>
        <source>yellow</source>
        <comment>lamp.sodium</comment>
        <translation>amarillo</translation>
    </message>
    <message>
        <source>green</source>
        <comment>lamp.green</comment>
        <translation>verde</translation>
    </message>
    <message>
        <source>black</source>
        <comment>colour.black</comment>
        <translation>negro</translation>
    </message>
    <message>
        <source>dark grey</source>
        <comment>colour.dark_grey</comment>
        <translation>gris oscuro</translation>
    </message>
    <message>
        <source>grey</source>
        <comment>colour.grey</comment>
        <translation>gris</translation>
    </message>
    <message>
        <source>pale grey</source>
        <comment>colour.pale_grey</comment>
        <translation>gris claro</translation>
    </message>
    <message>
        <source>white</source>
        <comment>colour.white</comment>
        <translation>blanco</translation>
    </message>
    <message>
        <source>dark red</source>
        <comment>colour.dark_red</comment>
        <translation>rojo oscuro</translation>
    </message>
    <message>
        <source>dark pink</source>
        <comment>colour.dark_pink</comment>
        <translation>rosa oscuro</translation>
    </message>
    <message>
        <source>dark orange</source>
        <comment>colour.dark_orange</comment>
        <translation>naranja oscuro</translation>
    </message>
    <message>
        <source>dark yellow</source>
        <comment>colour.dark_yellow</comment>
        <translation>amarillo oscuro</translation>
    </message>
    <message>
        <source>dark green</source>
        <comment>colour.dark_green</comment>
        <translation>verde oscuro</translation>
    </message>
    <message>
        <source>dark blue</source>
        <comment>colour.dark_blue</comment>
        <translation>azul oscuro</translation>
    </message>
    <message>
        <source>dark violet</source>
        <comment>colour.dark_violet</comment>
        <translation>violeta oscuro</translation>
    </message>
    <message>
        <source>red</source>
        <comment>colour.red</comment>
        <translation>rojo</translation>
    </message>
    <message>
        <source>pink</source>
        <comment>colour.pink</comment>
        <translation>rosa</translation>
    </message>
    <message>
        <source>orange</source>
        <comment>colour.orange</comment>
        <translation>naranja</translation>
    </message>
    <message>
        <source>yellow</source>
        <comment>colour.yellow</comment>
        <translation>amarillo</translation>
    </message>
    <message>
        <source>green</source>
        <comment>colour.green</comment>
        <translation>verde</translation>
    </message>
    <message>
        <source>blue</source>
        <comment>colour.blue</comment>
        <translation>azul</translation>
    </message>
    <message>
        <source>violet</source>
        <comment>colour.violet</comment>
        <translation>violeta</translation>
    </message>
    <message>
        <source>bright red</source>
        <comment>colour.bright_red</comment>
        <translation>rojo vivo</translation>
    </message>
    <message>
        <source>bright pink</source>
        <comment>colour.bright_pink</comment>
        <translation>rosa vivo</translation>
    </message>
    <message>
        <source>bright orange</source>
        <comment>colour.bright_orange</comment>
        <translation>naranja vivo</translation>
    </message>
    <message>
        <source>bright yellow</source>
        <comment>colour.bright_yellow</comment>
        <translation>amarillo vivo</translation>
    </message>
    <message>
        <source>bright green</source>
        <comment>colour.bright_green</comment>
        <translation>verde vivo</translation>
    </message>
    <message>
        <source>bright blue</source>
        <comment>colour.bright_blue</comment>
        <translation>azul vivo</translation>
    </message>
    <message>
        <source>bright violet</source>
        <comment>colour.bright_violet</comment>
        <translation>violeta vivo</translation>
    </message>
    <message>
        <source>pale red</source>
        <comment>colour.pale_red</comment>
        <translation>rojo pálido</translation>
    </message>
    <message>
        <source>pale pink</source>
        <comment>colour.pale_pink</comment>
        <translation>rosa pálido</translation>
    </message>
    <message>
        <source>pale orange</source>
        <comment>colour.pale_orange</comment>
        <translation>naranja pálido</translation>
    </message>
    <message>
        <source>pale yellow</source>
        <comment>colour.pale_yellow</comment>
        <translation>amarillo pálido</translation>
    </message>
    <message>
        <source>pale green</source>
        <comment>colour.pale_green</comment>
        <translation>verde pálido</translation>
    </message>
    <message>
        <source>pale blue</source>
        <comment>colour.pale_blue</comment>
        <translation>azul pálido</translation>
    </message>
    <message>
        <source>pale violet</source>
        <comment>colour.pale_violet</comment>
        <translation>violeta pálido</translation>
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
        <translation>Vea la tensión en el vidrio mientras nace.</translation>
    </message>
    <message>
        <source>Present</source>
        <comment>present</comment>
        <translation>Presentar</translation>
    </message>
    <message>
        <source>One big live picture for your audience, with your controls beside it.</source>
        <comment>present.help</comment>
        <translation>Una gran imagen en vivo para su público, con sus controles al lado.</translation>
    </message>
    <message>
        <source>Quit</source>
        <comment>quit</comment>
        <translation>Salir</translation>
    </message>
    <message>
        <source>Play</source>
        <comment>play</comment>
        <translation>Reproducir</translation>
    </message>
    <message>
        <source>Pause</source>
        <comment>pause</comment>
        <translation>Pausa</translation>
    </message>
    <message>
        <source>Run or stand still (Space)</source>
        <comment>play.help</comment>
        <translation>Correr o parar (Espacio)</translation>
    </message>
    <message>
        <source>Step back</source>
        <comment>back</comment>
        <translation>Paso atrás</translation>
    </message>
    <message>
        <source>One step earlier (Left arrow)</source>
        <comment>back.help</comment>
        <translation>Un paso antes (flecha izquierda)</translation>
    </message>
    <message>
        <source>Step on</source>
        <comment>forward</comment>
        <translation>Paso adelante</translation>
    </message>
    <message>
        <source>One step later (Right arrow)</source>
        <comment>forward.help</comment>
        <translation>Un paso después (flecha derecha)</translation>
    </message>
    <message>
        <source>Reset</source>
        <comment>reset</comment>
        <translation>Reiniciar</translation>
    </message>
    <message>
        <source>Back to the start of the same run (R)</source>
        <comment>reset.help</comment>
        <translation>Vuelve al inicio del mismo proceso (R)</translation>
    </message>
    <message>
        <source>Brighten a faint picture</source>
        <comment>brighten</comment>
        <translation>Aclarar una imagen tenue</translation>
    </message>
    <message>
        <source>Ten times as bright, and the stage says so (G)</source>
        <comment>brighten.help</comment>
        <translation>Diez veces más clara, y la escena lo dice (G)</translation>
    </message>
    <message>
        <source>Hold picture</source>
        <comment>hold</comment>
        <translation>Guardar imagen</translation>
    </message>
    <message>
        <source>Let go</source>
        <comment>hold.off</comment>
        <translation>Soltar</translation>
    </message>
    <message>
        <source>Keep this picture beside the next run (H)</source>
        <comment>hold.help</comment>
        <translation>Deja esta imagen junto al proceso siguiente (H)</translation>
    </message>
    <message>
        <source>Slow replay</source>
        <comment>replay</comment>
        <translation>Repetición lenta</translation>
    </message>
    <message>
        <source>Show the break again at 1/50 of real speed (B)</source>
        <comment>replay.help</comment>
        <translation>Muestra la rotura a 1/50 de la velocidad real (B)</translation>
    </message>
    <message>
        <source>Save picture</source>
        <comment>save</comment>
        <translation>Guardar como archivo</translation>
    </message>
    <message>
        <source>Save this picture as a PNG file in your Pictures folder (Ctrl+S)</source>
        <comment>save.help</comment>
        <translation>Guarda esta imagen como PNG en la carpeta Imágenes (Ctrl+S)</translation>
    </message>
    <message>
        <source>Saved as {path}</source>
        <comment>saved</comment>
        <translation>Guardado como {path}</translation>
    </message>
    <message>
        <source>Could not save the picture: {problem}</source>
        <comment>unsaved</comment>
        <translation>No se pudo guardar la imagen: {problem}</translation>
    </message>
    <message>
        <source>Time</source>
        <comment>time</comment>
        <translation>Tiempo</translation>
    </message>
    <message>
        <source>Drag to go back to any instant of this run</source>
        <comment>time.help</comment>
        <translation>Arrastre para volver a un instante de este proceso</translation>
    </message>
    <message>
        <source>Speed</source>
        <comment>speed</comment>
        <translation>Velocidad</translation>
    </message>
    <message>
        <source>How fast the model's time runs (Up and Down arrows)</source>
        <comment>speed.help</comment>
        <translation>Cómo de rápido corre el tiempo del modelo (flechas arriba y abajo)</translation>
    </message>
    <message>
        <source>real speed</source>
        <comment>speed.real</comment>
        <translation>velocidad real</translation>
    </message>
    <message>
        <source>1/{part} of real speed</source>
        <comment>speed.slow</comment>
        <translation>1/{part} de la velocidad real</translation>
    </message>
    <message>
        <source>{times} × real speed</source>
        <comment>speed.fast</comment>
        <translation>{times} × velocidad real</translation>
    </message>
    <message>
        <source>{speed}; this machine reaches {real}</source>
        <comment>speed.behind</comment>
        <translation>{speed}; este equipo llega a {real}</translation>
    </message>
    <message>
        <source>Scene</source>
        <comment>scene</comment>
        <translation>Escena</translation>
    </message>
    <message>
        <source>The scene {scene} cannot be shown: {problem}</source>
        <comment>unloaded</comment>
        <translation>La escena {scene} no se puede mostrar: {problem}</translation>
    </message>
    <message>
        <source>Run</source>
        <comment>page.run</comment>
        <translation>Proceso</translation>
    </message>
    <message>
        <source>Piece</source>
        <comment>page.piece</comment>
        <translation>Pieza</translation>
    </message>
    <message>
        <source>View</source>
        <comment>page.light</comment>
        <translation>Vista</translation>
    </message>
    <message>
        <source>Numbers</source>
        <comment>page.numbers</comment>
        <translation>Números</translation>
    </message>
    <message>
        <source>A change here starts the run again.</source>
        <comment>piece.note</comment>
        <translation>Un cambio aquí reinicia el proceso.</translation>
    </message>
    <message>
        <source>Back to the defaults</source>
        <comment>defaults</comment>
        <translation>Volver a los valores iniciales</translation>
    </message>
    <message>
        <source>Turn the polarizers</source>
        <comment>light.turn</comment>
        <translation>Girar los polarizadores</translation>
    </message>
    <message>
        <source>Angle of the pair of polarizers ([ and ])</source>
        <comment>light.turn.help</comment>
        <translation>Ángulo del par de polarizadores ([ y ])</translation>
    </message>
    <message>
        <source>Parallel polarizers (bright field)</source>
        <comment>light.parallel</comment>
        <translation>Polarizadores en paralelo (campo claro)</translation>
    </message>
    <message>
        <source>Off: crossed, so that unstressed glass is dark (X)</source>
        <comment>light.parallel.help</comment>
        <translation>No: cruzados, y el vidrio sin tensión queda oscuro (X)</translation>
    </message>
    <message>
        <source>Quarter-wave plates (no dark crosses)</source>
        <comment>light.quarter</comment>
        <translation>Láminas de cuarto de onda (sin cruces oscuras)</translation>
    </message>
    <message>
        <source>Circular light: the direction of the stress no longer counts (Q)</source>
        <comment>light.quarter.help</comment>
        <translation>Luz circular: la dirección de la tensión ya no cuenta (Q)</translation>
    </message>
    <message>
        <source>Tint plate</source>
        <comment>light.tint</comment>
        <translation>Lámina de onda</translation>
    </message>
    <message>
        <source>Full-wave plate: small stresses show as colours, the sign too (T)</source>
        <comment>light.tint.help</comment>
        <translation>Lámina de onda completa: las tensiones pequeñas se ven como colores, también su signo (T)</translation>
    </message>
    <message>
        <source>Lamp</source>
        <comment>light.lamp</comment>
        <translation>Lámpara</translation>
    </message>
    <message>
        <source>White light or one colour</source>
        <comment>light.lamp.help</comment>
        <translation>Luz blanca o de un solo color</translation>
    </message>
    <message>
        <source>Gain</source>
        <comment>light.gain</comment>
        <translation>Ganancia</translation>
    </message>
    <message>
        <source>Brightens the picture; the stage says so whenever it is not 1</source>
        <comment>light.gain.help</comment>
        <translation>Aclara la imagen; la escena lo dice si no es 1</translation>
    </message>
    <message>
        <source>Section shows</source>
        <comment>section.choice</comment>
        <translation>El corte muestra</translation>
    </message>
    <message>
        <source>What the colours of the section mean (S)</source>
        <comment>section.choice.help</comment>
        <translation>Qué significan los colores del corte (S)</translation>
    </message>
    <message>
        <source>Cut through the wall</source>
        <comment>section.title</comment>
        <translation>Corte de la pared</translation>
    </message>
    <message>
        <source>stress {name}</source>
        <comment>section.stress</comment>
        <translation>tensión {name}</translation>
    </message>
    <message>
        <source>temperature</source>
        <comment>section.heat</comment>
        <translation>temperatura</translation>
    </message>
    <message>
        <source>movement drawn {times} ×, really {really}</source>
        <comment>section.swell</comment>
        <translation>movimiento dibujado {times} ×, en realidad {really}</translation>
    </message>
    <message>
        <source>wall drawn {times} × thicker</source>
        <comment>section.thick</comment>
        <translation>pared dibujada {times} × más gruesa</translation>
    </message>
    <message>
        <source>Chart shows</source>
        <comment>chart.choice</comment>
        <translation>La gráfica muestra</translation>
    </message>
    <message>
        <source>Which of the curves the chart shows</source>
        <comment>chart.choice.help</comment>
        <translation>Qué curva muestra la gráfica</translation>
    </message>
    <message>
        <source>time</source>
        <comment>chart.time</comment>
        <translation>tiempo</translation>
    </message>
    <message>
        <source>pulled</source>
        <comment>tension</comment>
        <translation>tracción</translation>
    </message>
    <message>
        <source>squeezed</source>
        <comment>compression</comment>
        <translation>compresión</translation>
    </message>
    <message>
        <source>water drop</source>
        <comment>mark.drop</comment>
        <translation>gota de agua</translation>
    </message>
    <message>
        <source>flame</source>
        <comment>mark.flame</comment>
        <translation>llama</translation>
    </message>
    <message>
        <source>score</source>
        <comment>mark.score</comment>
        <translation>incisión</translation>
    </message>
    <message>
        <source>hot ring</source>
        <comment>mark.ring</comment>
        <translation>anillo caliente</translation>
    </message>
    <message>
        <source>crack</source>
        <comment>mark.crack</comment>
        <translation>grieta</translation>
    </message>
    <message>
        <source>squeezed</source>
        <comment>mark.squeeze</comment>
        <translation>compresión</translation>
    </message>
    <message>
        <source>pulled</source>
        <comment>mark.pull</comment>
        <translation>tracción</translation>
    </message>
    <message>
        <source>plate adds</source>
        <comment>strip.adds</comment>
        <translation>la lámina suma</translation>
    </message>
    <message>
        <source>plate takes away</source>
        <comment>strip.takes</comment>
        <translation>la lámina resta</translation>
    </message>
    <message>
        <source>brightened {gain} ×</source>
        <comment>gain</comment>
        <translation>aclarado {gain} ×</translation>
    </message>
    <message>
        <source>Held at {time}</source>
        <comment>held</comment>
        <translation>Guardada a los {time}</translation>
    </message>
    <message>
        <source>Now</source>
        <comment>held.now</comment>
        <translation>Ahora</translation>
    </message>
    <message>
        <source>{label}: {then} → {now}</source>
        <comment>held.change</comment>
        <translation>{label}: {then} → {now}</translation>
    </message>
    <message>
        <source>same settings</source>
        <comment>held.same</comment>
        <translation>mismos valores</translation>
    </message>
    <message>
        <source>yes</source>
        <comment>yes</comment>
        <translation>sí</translation>
    </message>
    <message>
        <source>no</source>
        <comment>no</comment>
        <translation>no</translation>
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
        <translation>menos del {percent} %</translation>
    </message>
    <message>
        <source>over {percent} %</source>
        <comment>odds.over</comment>
        <translation>más del {percent} %</translation>
    </message>
    <message>
        <source>Something went wrong and the scene was reset: {problem}</source>
        <comment>reset.fault</comment>
        <translation>Algo falló y la escena se ha reiniciado: {problem}</translation>
    </message>
    <message>
        <source>Space play · ← → step · ↑ ↓ speed · R reset · H hold · B replay · D first button of the scene · 1 to 9 each of them · S section · G brighten · [ ] turn · X crossed or parallel · Q quarter-wave plates · T tint plate · Ctrl+S save · F1 these keys · F2 controls · F11 full screen</source>
        <comment>keys</comment>
        <translation>Espacio reproducir · ← → paso · ↑ ↓ velocidad · R reiniciar · H guardar imagen · B repetición · D primer botón de la escena · 1 a 9 cada uno de ellos · S corte · G aclarar · [ ] girar · X cruzados o paralelos · Q cuarto de onda · T lámina de onda · Ctrl+S archivo · F1 estas teclas · F2 controles · F11 pantalla completa</translation>
    </message>
    <message>
        <source>Audience</source>
        <comment>audience.title</comment>
        <translation>Público</translation>
    </message>
    <message>
        <source>{sign} Right</source>
        <comment>audience.right</comment>
        <translation>{sign} Correcto</translation>
    </message>
    <message>
        <source>{count} hand</source>
        <comment>audience.hand</comment>
        <translation>{count} mano</translation>
    </message>
    <message>
        <source>{count} hands</source>
        <comment>audience.hands</comment>
        <translation>{count} manos</translation>
    </message>
    <message>
        <source>What happened: {what}</source>
        <comment>audience.happened</comment>
        <translation>Lo que pasó: {what}</translation>
    </message>
    <message>
        <source>The audience sees {name}.</source>
        <comment>audience.two</comment>
        <translation>El público ve {name}.</translation>
    </message>
    <message>
        <source>One screen: the audience sees this window.</source>
        <comment>audience.one</comment>
        <translation>Una pantalla: el público ve esta ventana.</translation>
    </message>
    <message>
        <source>Projector gone: your show goes on here.</source>
        <comment>audience.gone</comment>
        <translation>Proyector desconectado: la función sigue aquí.</translation>
    </message>
    <message>
        <source>The picture does not reach {name}: press Windows+P or look at the cable, then choose the screen again.</source>
        <comment>audience.unplaced</comment>
        <translation>La imagen no llega a {name}: pulse Windows+P o revise el cable y vuelva a elegir la pantalla.</translation>
    </message>
    <message>
        <source>What to say, to hold and to mind</source>
        <comment>show.prompts</comment>
        <translation>Qué decir, sostener y vigilar</translation>
    </message>
    <message>
        <source>In your hand: {what}</source>
        <comment>show.hold</comment>
        <translation>En la mano: {what}</translation>
    </message>
    <message>
        <source>Ask for a helper. Brief: {briefing} · Eyewear: {eyewear} · Stands: {place} · Way out: {exit}</source>
        <comment>show.helper</comment>
        <translation>Pida ayuda. Instrucciones: {briefing} · Gafas: {eyewear} · Lugar: {place} · Salida: {exit}</translation>
    </message>
    <message>
        <source>This is the last step.</source>
        <comment>show.last</comment>
        <translation>Este es el último paso.</translation>
    </message>
    <message>
        <source>Next: {title}</source>
        <comment>show.coming</comment>
        <translation>Después: {title}</translation>
    </message>
    <message>
        <source>Next: {title} – take {hold}</source>
        <comment>show.coming.hold</comment>
        <translation>Después: {title} – tome {hold}</translation>
    </message>
    <message>
        <source>clock</source>
        <comment>show.clock</comment>
        <translation>hora</translation>
    </message>
    <message>
        <source>left in this step</source>
        <comment>show.step_left</comment>
        <translation>queda en este paso</translation>
    </message>
    <message>
        <source>left in all</source>
        <comment>show.all_left</comment>
        <translation>queda en total</translation>
    </message>
    <message>
        <source>late by {time}</source>
        <comment>show.late</comment>
        <translation>{time} de retraso</translation>
    </message>
    <message>
        <source>It is {clock}; left in this step {step}, in all {all}</source>
        <comment>show.clock.spoken</comment>
        <translation>Son las {clock}; quedan {step} en este paso, {all} en total</translation>
    </message>
    <message>
        <source>Steps</source>
        <comment>show.steps</comment>
        <translation>Pasos</translation>
    </message>
    <message>
        <source>{spent} of {planned}</source>
        <comment>show.step.spent</comment>
        <translation>{spent} de {planned}</translation>
    </message>
    <message>
        <source>cut</source>
        <comment>show.step.cut</comment>
        <translation>quitado</translation>
    </message>
    <message>
        <source>must stay</source>
        <comment>priority.1</comment>
        <translation>debe quedar</translation>
    </message>
    <message>
        <source>should stay</source>
        <comment>priority.2</comment>
        <translation>debería quedar</translation>
    </message>
    <message>
        <source>may go</source>
        <comment>priority.3</comment>
        <translation>puede quitarse</translation>
    </message>
    <message>
        <source>One hand more for {answer}</source>
        <comment>hands.more</comment>
        <translation>Una mano más para {answer}</translation>
    </message>
    <message>
        <source>One hand less for {answer}</source>
        <comment>hands.less</comment>
        <translation>Una mano menos para {answer}</translation>
    </message>
    <message>
        <source>The audience sees: {state}</source>
        <comment>mirror</comment>
        <translation>El público ve: {state}</translation>
    </message>
    <message>
        <source>open flame</source>
        <comment>hazard.flame</comment>
        <translation>llama abierta</translation>
    </message>
    <message>
        <source>hot glass</source>
        <comment>hazard.hot-glass</comment>
        <translation>vidrio caliente</translation>
    </message>
    <message>
        <source>breaking glass</source>
        <comment>hazard.breakage</comment>
        <translation>rotura de vidrio</translation>
    </message>
    <message>
        <source>sharp edges</source>
        <comment>hazard.sharp-edges</comment>
        <translation>bordes cortantes</translation>
    </message>
    <message>
        <source>hot water</source>
        <comment>hazard.hot-water</comment>
        <translation>agua caliente</translation>
    </message>
    <message>
        <source>piece with stored energy</source>
        <comment>hazard.stored-energy</comment>
        <translation>pieza con energía almacenada</translation>
    </message>
    <message>
        <source>◀ Back</source>
        <comment>header.back</comment>
        <translation>◀ Atrás</translation>
    </message>
    <message>
        <source>The step or part of a step before (Page up)</source>
        <comment>header.back.help</comment>
        <translation>El paso o la parte anterior (Re Pág)</translation>
    </message>
    <message>
        <source>Next ▶</source>
        <comment>header.next</comment>
        <translation>Siguiente ▶</translation>
    </message>
    <message>
        <source>The next part of this step, then the next step (Page down)</source>
        <comment>header.next.help</comment>
        <translation>La parte siguiente de este paso, luego el paso siguiente (Av Pág)</translation>
    </message>
    <message>
        <source>Blank</source>
        <comment>header.blank</comment>
        <translation>En negro</translation>
    </message>
    <message>
        <source>A dark picture for the audience, and back (B or full stop)</source>
        <comment>header.blank.help</comment>
        <translation>Una imagen oscura para el público, y vuelta (B o punto)</translation>
    </message>
    <message>
        <source>Freeze</source>
        <comment>header.freeze</comment>
        <translation>Congelar</translation>
    </message>
    <message>
        <source>The audience keeps this picture while you change things (Z)</source>
        <comment>header.freeze.help</comment>
        <translation>El público conserva esta imagen mientras usted cambia cosas (Z)</translation>
    </message>
    <message>
        <source>Return</source>
        <comment>header.return</comment>
        <translation>Restaurar</translation>
    </message>
    <message>
        <source>Put back exactly what this step showed before you changed it (F)</source>
        <comment>header.return.help</comment>
        <translation>Vuelve exactamente a lo que mostraba este paso antes de sus cambios (F)</translation>
    </message>
    <message>
        <source>More</source>
        <comment>header.strip</comment>
        <translation>Más</translation>
    </message>
    <message>
        <source>Strip of actions (F5 or Esc)</source>
        <comment>header.strip.help</comment>
        <translation>Barra de acciones (F5 o Esc)</translation>
    </message>
    <message>
        <source>Notes</source>
        <comment>header.notes</comment>
        <translation>Notas</translation>
    </message>
    <message>
        <source>Page</source>
        <comment>header.page</comment>
        <translation>Página</translation>
    </message>
    <message>
        <source>Show</source>
        <comment>page.show</comment>
        <translation>Función</translation>
    </message>
    <message>
        <source>Steps</source>
        <comment>page.steps</comment>
        <translation>Pasos</translation>
    </message>
    <message>
        <source>Before</source>
        <comment>page.before</comment>
        <translation>Antes</translation>
    </message>
    <message>
        <source>Between</source>
        <comment>page.between</comment>
        <translation>Entre funciones</translation>
    </message>
    <message>
        <source>After</source>
        <comment>page.after</comment>
        <translation>Después</translation>
    </message>
    <message>
        <source>Keys</source>
        <comment>page.keys</comment>
        <translation>Teclas</translation>
    </message>
    <message>
        <source>Begin the show ▶</source>
        <comment>next.begin</comment>
        <translation>Empezar la función ▶</translation>
    </message>
    <message>
        <source>Put the question ▶</source>
        <comment>next.ask</comment>
        <translation>Hacer la pregunta ▶</translation>
    </message>
    <message>
        <source>Count hands ▶</source>
        <comment>next.count</comment>
        <translation>Contar manos ▶</translation>
    </message>
    <message>
        <source>Show the bars ▶</source>
        <comment>next.bars</comment>
        <translation>Mostrar las barras ▶</translation>
    </message>
    <message>
        <source>Let it happen ▶</source>
        <comment>next.reveal</comment>
        <translation>Dejar que pase ▶</translation>
    </message>
    <message>
        <source>Show who was right ▶</source>
        <comment>next.result</comment>
        <translation>Mostrar quién acertó ▶</translation>
    </message>
    <message>
        <source>{number}  {title} ▶</source>
        <comment>next.step</comment>
        <translation>{number}  {title} ▶</translation>
    </message>
    <message>
        <source>This is the last step</source>
        <comment>next.none</comment>
        <translation>Este es el último paso</translation>
    </message>
    <message>
        <source>{reading}: {value}</source>
        <comment>outcome</comment>
        <translation>{reading}: {value}</translation>
    </message>
    <message>
        <source>Please do not try this at home.</source>
        <comment>welcome.home</comment>
        <translation>Por favor, no lo intente en casa.</translation>
    </message>
    <message>
        <source>Live</source>
        <comment>audience.state.live</comment>
        <translation>En vivo</translation>
    </message>
    <message>
        <source>Live: the answer</source>
        <comment>audience.state.reveal</comment>
        <translation>En vivo: la respuesta</translation>
    </message>
    <message>
        <source>Frozen</source>
        <comment>audience.state.frozen</comment>
        <translation>Congelado</translation>
    </message>
    <message>
        <source>Blank</source>
        <comment>audience.state.blank</comment>
        <translation>En negro</translation>
    </message>
    <message>
        <source>Question</source>
        <comment>audience.state.question</comment>
        <translation>Pregunta</translation>
    </message>
    <message>
        <source>Card</source>
        <comment>audience.state.card</comment>
        <translation>Tarjeta</translation>
    </message>
    <message>
        <source>Projector card</source>
        <comment>audience.state.widget</comment>
        <translation>Carta del proyector</translation>
    </message>
    <message>
        <source>We stop here for a moment</source>
        <comment>emergency.title</comment>
        <translation>Nos detenemos aquí un momento</translation>
    </message>
    <message>
        <source>Please keep calm and listen.</source>
        <comment>emergency.stay</comment>
        <translation>Por favor, mantengan la calma y escuchen.</translation>
    </message>
    <message>
        <source>Please do what the staff ask you to.</source>
        <comment>emergency.follow</comment>
        <translation>Por favor, sigan las indicaciones del personal.</translation>
    </message>
    <message>
        <source>⚠ Emergency: the audience reads a calm card, the model stands still</source>
        <comment>emergency.presenter</comment>
        <translation>⚠ Emergencia: el público lee una tarjeta tranquila, el modelo está parado</translation>
    </message>
    <message>
        <source>not written down</source>
        <comment>emergency.missing</comment>
        <translation>sin anotar</translation>
    </message>
    <message>
        <source>The same key, or the entry of the strip, goes back to the show.</source>
        <comment>emergency.back</comment>
        <translation>La misma tecla o la entrada de la barra vuelve a la función.</translation>
    </message>
    <message>
        <source>This step has no other way written down.</source>
        <comment>contingency.none</comment>
        <translation>Este paso no tiene anotado otro camino.</translation>
    </message>
    <message>
        <source>No catch-up line is written down so far.</source>
        <comment>catch_up.none</comment>
        <translation>Aún no hay anotada una frase para ponerse al día.</translation>
    </message>
    <message>
        <source>Kept as favourite {number}</source>
        <comment>favourite.stored</comment>
        <translation>Guardado como favorito {number}</translation>
    </message>
    <message>
        <source>There is no favourite {number} yet: Alt+Shift+{number} keeps this state</source>
        <comment>favourite.none</comment>
        <translation>Aún no hay favorito {number}: Alt+Mayús+{number} guarda este estado</translation>
    </message>
    <message>
        <source>Nothing was changed by hand in this step.</source>
        <comment>return.nothing</comment>
        <translation>En este paso no se cambió nada a mano.</translation>
    </message>
    <message>
        <source>{title}: {done} of {all}</source>
        <comment>ticks</comment>
        <translation>{title}: {done} de {all}</translation>
    </message>
    <message>
        <source>Time there is</source>
        <comment>before.minutes</comment>
        <translation>Tiempo disponible</translation>
    </message>
    <message>
        <source>Less than the sheet asks for: the steps that may go are cut</source>
        <comment>before.minutes.help</comment>
        <translation>Menos de lo que pide el guion: se quitan los pasos que pueden quitarse</translation>
    </message>
    <message>
        <source>Left out: {steps}</source>
        <comment>before.cut</comment>
        <translation>Omitidos: {steps}</translation>
    </message>
    <message>
        <source>Every step is shown.</source>
        <comment>before.cut.none</comment>
        <translation>Se muestran todos los pasos.</translation>
    </message>
    <message>
        <source>Even the steps that must stay take {seconds} s more than there is.</source>
        <comment>before.cut.missing</comment>
        <translation>Incluso los pasos que deben quedar requieren {seconds} s más de lo que hay.</translation>
    </message>
    <message>
        <source>Rehearsal: time each step and propose a cut</source>
        <comment>before.rehearsal</comment>
        <translation>Ensayo: cronometrar cada paso y proponer un recorte</translation>
    </message>
    <message>
        <source>Projector card on the audience's screen</source>
        <comment>before.card</comment>
        <translation>Carta del proyector en la pantalla del público</translation>
    </message>
    <message>
        <source>Props</source>
        <comment>before.props</comment>
        <translation>Material</translation>
    </message>
    <message>
        <source>Samples</source>
        <comment>before.samples</comment>
        <translation>Muestras</translation>
    </message>
    <message>
        <source>Eyewear</source>
        <comment>before.eyewear</comment>
        <translation>Gafas de protección</translation>
    </message>
    <message>
        <source>Helpers</source>
        <comment>before.helpers</comment>
        <translation>Ayudantes</translation>
    </message>
    <message>
        <source>Cautions</source>
        <comment>before.cautions</comment>
        <translation>Precauciones</translation>
    </message>
    <message>
        <source>The venue's rules</source>
        <comment>venue.title</comment>
        <translation>Normas del lugar</translation>
    </message>
    <message>
        <source>A review holds for (days)</source>
        <comment>venue.days</comment>
        <translation>Una revisión vale (días)</translation>
    </message>
    <message>
        <source>As your assessment says; without it no review counts.</source>
        <comment>venue.days.ask</comment>
        <translation>Como diga su evaluación de riesgos; sin ello no cuenta ninguna revisión.</translation>
    </message>
    <message>
        <source>Write whole days, 1 to 3660</source>
        <comment>venue.days.wrong</comment>
        <translation>Escriba días enteros, de 1 a 3660</translation>
    </message>
    <message>
        <source>Role that has reviewed what stands above today, no name</source>
        <comment>venue.role</comment>
        <translation>Cargo de quien ha revisado hoy lo anterior, sin nombre</translation>
    </message>
    <message>
        <source>Reviewed today</source>
        <comment>venue.reviewed</comment>
        <translation>Revisado hoy</translation>
    </message>
    <message>
        <source>No rule has a value yet: write them first</source>
        <comment>venue.nothing</comment>
        <translation>Ninguna norma tiene valor aún: escríbalas primero</translation>
    </message>
    <message>
        <source>Turnaround begins</source>
        <comment>between.start</comment>
        <translation>Empieza el cambio</translation>
    </message>
    <message>
        <source>Turnaround: {time}</source>
        <comment>between.clock</comment>
        <translation>Cambio: {time}</translation>
    </message>
    <message>
        <source>Put back</source>
        <comment>between.reset</comment>
        <translation>Devolver a su sitio</translation>
    </message>
    <message>
        <source>Glass counted out and in</source>
        <comment>between.pieces</comment>
        <translation>Vidrio contado a la salida y a la vuelta</translation>
    </message>
    <message>
        <source>Batch</source>
        <comment>between.batch</comment>
        <translation>Lote</translation>
    </message>
    <message>
        <source>Pieces</source>
        <comment>between.number</comment>
        <translation>Piezas</translation>
    </message>
    <message>
        <source>Out</source>
        <comment>between.out</comment>
        <translation>Fuera</translation>
    </message>
    <message>
        <source>Back</source>
        <comment>between.back</comment>
        <translation>De vuelta</translation>
    </message>
    <message>
        <source>Broken</source>
        <comment>between.broken</comment>
        <translation>Rotas</translation>
    </message>
    <message>
        <source>New</source>
        <comment>between.delivered</comment>
        <translation>Nuevas</translation>
    </message>
    <message>
        <source>{batch}: {number} in stock</source>
        <comment>between.stock</comment>
        <translation>{batch}: {number} en existencia</translation>
    </message>
    <message>
        <source>Nothing was counted out for this show.</source>
        <comment>between.none</comment>
        <translation>Para esta función no se contó nada a la salida.</translation>
    </message>
    <message>
        <source>No batch is known yet: write one below.</source>
        <comment>between.no_batch</comment>
        <translation>Aún no se conoce ningún lote: escriba uno abajo.</translation>
    </message>
    <message>
        <source>New batch: name; kind; glass; thickness in mm</source>
        <comment>between.new_batch</comment>
        <translation>Lote nuevo: nombre; tipo; vidrio; espesor en mm</translation>
    </message>
    <message>
        <source>Write name; kind; glass; thickness in mm – such as A1; bottles; soda-lime; 3</source>
        <comment>between.batch_form</comment>
        <translation>Escriba nombre; tipo; vidrio; espesor en mm – por ejemplo A1; botellas; sodocálcico; 3</translation>
    </message>
    <message>
        <source>Hot piece</source>
        <comment>between.hot.title</comment>
        <translation>Pieza caliente</translation>
    </message>
    <message>
        <source>Put down hot now</source>
        <comment>between.hot</comment>
        <translation>Dejada caliente ahora</translation>
    </message>
    <message>
        <source>For the journal</source>
        <comment>after.title</comment>
        <translation>Para el diario</translation>
    </message>
    <message>
        <source>People in the audience</source>
        <comment>after.heads</comment>
        <translation>Personas en el público</translation>
    </message>
    <message>
        <source>Write down</source>
        <comment>after.count</comment>
        <translation>Anotar</translation>
    </message>
    <message>
        <source>An odd question, in one line</source>
        <comment>after.question</comment>
        <translation>Una pregunta curiosa, en una línea</translation>
    </message>
    <message>
        <source>A near miss: what, and where</source>
        <comment>after.miss</comment>
        <translation>Un casi accidente: qué y dónde</translation>
    </message>
    <message>
        <source>What broke</source>
        <comment>after.breakage</comment>
        <translation>Qué se rompió</translation>
    </message>
    <message>
        <source>It was meant to break</source>
        <comment>after.meant</comment>
        <translation>Debía romperse</translation>
    </message>
    <message>
        <source>Kind of note</source>
        <comment>after.kind</comment>
        <translation>Tipo de nota</translation>
    </message>
    <message>
        <source>A note</source>
        <comment>after.note</comment>
        <translation>Una nota</translation>
    </message>
    <message>
        <source>Take</source>
        <comment>after.take</comment>
        <translation>Anotar</translation>
    </message>
    <message>
        <source>End this show</source>
        <comment>after.end</comment>
        <translation>Terminar esta función</translation>
    </message>
    <message>
        <source>Save handover page</source>
        <comment>after.handover</comment>
        <translation>Guardar hoja de relevo</translation>
    </message>
    <message>
        <source>{kind}: {text}</source>
        <comment>after.taken</comment>
        <translation>{kind}: {text}</translation>
    </message>
    <message>
        <source>The audience's screen</source>
        <comment>screens.title</comment>
        <translation>La pantalla del público</translation>
    </message>
    <message>
        <source>Change the two windows' screens</source>
        <comment>screens.swap</comment>
        <translation>Intercambiar las pantallas de las dos ventanas</translation>
    </message>
    <message>
        <source>How both windows look</source>
        <comment>screens.look</comment>
        <translation>Aspecto de las dos ventanas</translation>
    </message>
    <message>
        <source>Calm: soften bright stripes and sudden changes</source>
        <comment>screens.calm</comment>
        <translation>Calma: suavizar franjas brillantes y cambios bruscos</translation>
    </message>
    <message>
        <source>For people who react to stripes and flashes. The stage says when a picture is softened.</source>
        <comment>screens.calm.help</comment>
        <translation>Para quienes reaccionan a franjas y destellos. La escena dice cuándo se suaviza una imagen.</translation>
    </message>
    <message>
        <source>No fading from one picture to the next</source>
        <comment>screens.still</comment>
        <translation>Sin fundidos de una imagen a otra</translation>
    </message>
    <message>
        <source>High contrast</source>
        <comment>screens.high_contrast</comment>
        <translation>Alto contraste</translation>
    </message>
    <message>
        <source>Size of all words</source>
        <comment>screens.scale</comment>
        <translation>Tamaño de todo el texto</translation>
    </message>
    <message>
        <source>{times} ×</source>
        <comment>screens.times</comment>
        <translation>{times} ×</translation>
    </message>
    <message>
        <source>Second language of the captions</source>
        <comment>screens.second</comment>
        <translation>Segundo idioma de los subtítulos</translation>
    </message>
    <message>
        <source>none</source>
        <comment>screens.no_second</comment>
        <translation>ninguno</translation>
    </message>
    <message>
        <source>Screens</source>
        <comment>page.screens</comment>
        <translation>Pantallas</translation>
    </message>
    <message>
        <source>Fit into the time left</source>
        <comment>steps.fit</comment>
        <translation>Ajustar al tiempo que queda</translation>
    </message>
    <message>
        <source>Take every step in again</source>
        <comment>steps.whole</comment>
        <translation>Volver a incluir todos los pasos</translation>
    </message>
    <message>
        <source>Save this state as a step</source>
        <comment>steps.save</comment>
        <translation>Guardar este estado como paso</translation>
    </message>
    <message>
        <source>{title} took {took} of {planned}</source>
        <comment>steps.pace</comment>
        <translation>{title} tardó {took} de {planned}</translation>
    </message>
    <message>
        <source>Rehearsed so far: {paces}. To fit the slot, leave out: {dropped}</source>
        <comment>steps.rehearsed</comment>
        <translation>Ensayado hasta ahora: {paces}. Para que quepa, omita: {dropped}</translation>
    </message>
    <message>
        <source>Which show?</source>
        <comment>choose.title</comment>
        <translation>¿Qué función?</translation>
    </message>
    <message>
        <source>{minutes} min · {steps} steps · {hazards}</source>
        <comment>choose.sheet</comment>
        <translation>{minutes} min · {steps} pasos · {hazards}</translation>
    </message>
    <message>
        <source>no flame, no breakage</source>
        <comment>choose.no_hazard</comment>
        <translation>sin llama, sin roturas</translation>
    </message>
    <message>
        <source>Scenes without a sheet</source>
        <comment>choose.free</comment>
        <translation>Escenas sin guion</translation>
    </message>
    <message>
        <source>Every scene to choose from, no clock, no notes.</source>
        <comment>choose.free.help</comment>
        <translation>Todas las escenas, sin reloj ni notas.</translation>
    </message>
    <message>
        <source>Go on: {title}</source>
        <comment>choose.go_on</comment>
        <translation>Seguir: {title}</translation>
    </message>
    <message>
        <source>{sheet} was interrupted; {spent} of it are over.</source>
        <comment>choose.go_on.help</comment>
        <translation>{sheet} se interrumpió; han pasado {spent}.</translation>
    </message>
    <message>
        <source>Open another sheet …</source>
        <comment>choose.other</comment>
        <translation>Abrir otro guion …</translation>
    </message>
    <message>
        <source>A show is running: close the window again within {seconds} s to leave it. It can be gone on with.</source>
        <comment>close.again</comment>
        <translation>Hay una función en marcha: cierre la ventana otra vez antes de {seconds} s para salir. Se puede retomar.</translation>
    </message>
    <message>
        <source>Nothing can be saved: the data folder cannot be written. The show goes on.</source>
        <comment>keeping.none</comment>
        <translation>No se puede guardar nada: no se puede escribir en la carpeta de datos. La función sigue.</translation>
    </message>
    <message>
        <source>There is no sheet to save a step in</source>
        <comment>step.no_sheet</comment>
        <translation>No hay guion en el que guardar un paso</translation>
    </message>
    <message>
        <source>Saved as the last step of {sheet}; its words are still to be written</source>
        <comment>step.saved</comment>
        <translation>Guardado como último paso de {sheet}; faltan por escribir sus palabras</translation>
    </message>
    <message>
        <source>The sheet has a mistake and stays as it was: {problem}</source>
        <comment>sheet.broken</comment>
        <translation>El guion tiene un error y queda como estaba: {problem}</translation>
    </message>
    <message>
        <source>The sheet was saved and has been read again.</source>
        <comment>sheet.reloaded</comment>
        <translation>El guion se guardó y se ha vuelto a leer.</translation>
    </message>
    <message>
        <source>written to the disk</source>
        <comment>journal.disk</comment>
        <translation>escrito en el disco</translation>
    </message>
    <message>
        <source>kept in memory alone: the disk cannot be written</source>
        <comment>journal.memory</comment>
        <translation>solo en memoria: no se puede escribir en el disco</translation>
    </message>
    <message>
        <source>Show {show} of the journal, {place}. Roles only, no names.</source>
        <comment>journal.line</comment>
        <translation>Función {show} del diario, {place}. Solo cargos, sin nombres.</translation>
    </message>
    <message>
        <source>No show has begun yet: there is nothing to write it to</source>
        <comment>journal.no_show</comment>
        <translation>Aún no ha empezado ninguna función donde anotarlo</translation>
    </message>
    <message>
        <source>No reminder from the model for this piece. It may be hot all the same: tongs and mat until it has been checked</source>
        <comment>between.hot.none</comment>
        <translation>El modelo no da aviso para esta pieza. Aun así puede estar caliente: pinzas y estera hasta que se haya comprobado</translation>
    </message>
    <message>
        <source>How it was left</source>
        <comment>note.state</comment>
        <translation>Cómo quedó</translation>
    </message>
    <message>
        <source>Fault</source>
        <comment>note.fault</comment>
        <translation>Avería</translation>
    </message>
    <message>
        <source>To order</source>
        <comment>note.order</comment>
        <translation>Por pedir</translation>
    </message>
    <message>
        <source>Note</source>
        <comment>note.note</comment>
        <translation>Nota</translation>
    </message>
    <message>
        <source>One moment: what was shown is being put back.</source>
        <comment>return.wait</comment>
        <translation>Un momento: se está restaurando lo que se mostraba.</translation>
    </message>
    <message>
        <source>{file} could not be read and is left out.</source>
        <comment>autosave.broken</comment>
        <translation>{file} no se pudo leer y se omite.</translation>
    </message>
    <message>
        <source>The show goes on, but cannot save itself: {problem}</source>
        <comment>autosave.unsaved</comment>
        <translation>La función sigue, pero no puede guardarse: {problem}</translation>
    </message>
    <message>
        <source>Lehrlight is open already: this window does not save its show.</source>
        <comment>autosave.second</comment>
        <translation>Lehrlight ya está abierto: esta ventana no guarda su función.</translation>
    </message>
    <message>
        <source>Page Down</source>
        <comment>key.page_down</comment>
        <translation>Av Pág</translation>
    </message>
    <message>
        <source>Page Up</source>
        <comment>key.page_up</comment>
        <translation>Re Pág</translation>
    </message>
    <message>
        <source>Left arrow</source>
        <comment>key.left</comment>
        <translation>Flecha izquierda</translation>
    </message>
    <message>
        <source>Right arrow</source>
        <comment>key.right</comment>
        <translation>Flecha derecha</translation>
    </message>
    <message>
        <source>Up arrow</source>
        <comment>key.up</comment>
        <translation>Flecha arriba</translation>
    </message>
    <message>
        <source>Down arrow</source>
        <comment>key.down</comment>
        <translation>Flecha abajo</translation>
    </message>
    <message>
        <source>Full stop (.)</source>
        <comment>key.stop</comment>
        <translation>Punto (.)</translation>
    </message>
    <message>
        <source>Comma (,)</source>
        <comment>key.comma</comment>
        <translation>Coma (,)</translation>
    </message>
    <message>
        <source>Space</source>
        <comment>key.space</comment>
        <translation>Espacio</translation>
    </message>
    <message>
        <source>{first} to {last}</source>
        <comment>key.range</comment>
        <translation>{first} a {last}</translation>
    </message>
    <message>
        <source>Next</source>
        <comment>act.next</comment>
        <translation>Siguiente</translation>
    </message>
    <message>
        <source>Back</source>
        <comment>act.back</comment>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>Blank</source>
        <comment>act.blank</comment>
        <translation>En negro</translation>
    </message>
    <message>
        <source>Strip of actions</source>
        <comment>act.strip</comment>
        <translation>Barra de acciones</translation>
    </message>
    <message>
        <source>Back to this step's state</source>
        <comment>act.return</comment>
        <translation>Volver al estado de este paso</translation>
    </message>
    <message>
        <source>Freeze the picture</source>
        <comment>act.freeze</comment>
        <translation>Congelar la imagen</translation>
    </message>
    <message>
        <source>Catch-up line</source>
        <comment>act.catch_up</comment>
        <translation>Frase para ponerse al día</translation>
    </message>
    <message>
        <source>It went differently</source>
        <comment>act.contingency</comment>
        <translation>Salió de otra manera</translation>
    </message>
    <message>
        <source>Captions</source>
        <comment>act.captions</comment>
        <translation>Subtítulos</translation>
    </message>
    <message>
        <source>Jump to a step</source>
        <comment>act.jump</comment>
        <translation>Saltar a un paso</translation>
    </message>
    <message>
        <source>Emergency card</source>
        <comment>act.emergency</comment>
        <translation>Tarjeta de emergencia</translation>
    </message>
    <message>
        <source>A hand for answer {number}</source>
        <comment>act.count</comment>
        <translation>Una mano para la respuesta {number}</translation>
    </message>
    <message>
        <source>A hand less for answer {number}</source>
        <comment>act.less</comment>
        <translation>Una mano menos para la respuesta {number}</translation>
    </message>
    <message>
        <source>Play or pause</source>
        <comment>act.play</comment>
        <translation>Reproducir o pausar</translation>
    </message>
    <message>
        <source>One instant back</source>
        <comment>act.step_back</comment>
        <translation>Un instante atrás</translation>
    </message>
    <message>
        <source>One instant on</source>
        <comment>act.step_on</comment>
        <translation>Un instante adelante</translation>
    </message>
    <message>
        <source>Faster</source>
        <comment>act.faster</comment>
        <translation>Más rápido</translation>
    </message>
    <message>
        <source>Slower</source>
        <comment>act.slower</comment>
        <translation>Más lento</translation>
    </message>
    <message>
        <source>Restart the scene</source>
        <comment>act.reset</comment>
        <translation>Reiniciar la escena</translation>
    </message>
    <message>
        <source>Hold this picture</source>
        <comment>act.hold</comment>
        <translation>Guardar esta imagen</translation>
    </message>
    <message>
        <source>Slow replay of the break</source>
        <comment>act.replay</comment>
        <translation>Repetición lenta de la rotura</translation>
    </message>
    <message>
        <source>First button of the scene</source>
        <comment>act.first_button</comment>
        <translation>Primer botón de la escena</translation>
    </message>
    <message>
        <source>Button {number} of the scene</source>
        <comment>act.button</comment>
        <translation>Botón {number} de la escena</translation>
    </message>
    <message>
        <source>What the section shows</source>
        <comment>act.section</comment>
        <translation>Qué muestra el corte</translation>
    </message>
    <message>
        <source>Brighten a faint picture</source>
        <comment>act.brighten</comment>
        <translation>Aclarar una imagen tenue</translation>
    </message>
    <message>
        <source>Turn the polarizers back</source>
        <comment>act.turn_back</comment>
        <translation>Girar atrás los polarizadores</translation>
    </message>
    <message>
        <source>Turn the polarizers on</source>
        <comment>act.turn_on</comment>
        <translation>Girar adelante los polarizadores</translation>
    </message>
    <message>
        <source>Crossed or parallel</source>
        <comment>act.cross</comment>
        <translation>Cruzados o en paralelo</translation>
    </message>
    <message>
        <source>Quarter-wave plates</source>
        <comment>act.quarter</comment>
        <translation>Láminas de cuarto de onda</translation>
    </message>
    <message>
        <source>Tint plate</source>
        <comment>act.tint</comment>
        <translation>Lámina de onda</translation>
    </message>
    <message>
        <source>Favourite {number}</source>
        <comment>act.favourite</comment>
        <translation>Favorito {number}</translation>
    </message>
    <message>
        <source>Keep as favourite {number}</source>
        <comment>act.store</comment>
        <translation>Guardar como favorito {number}</translation>
    </message>
    <message>
        <source>Save the picture</source>
        <comment>act.save</comment>
        <translation>Guardar la imagen</translation>
    </message>
    <message>
        <source>Show the keys</source>
        <comment>act.keys</comment>
        <translation>Mostrar las teclas</translation>
    </message>
    <message>
        <source>Hide or show the controls</source>
        <comment>act.controls</comment>
        <translation>Ocultar o mostrar los controles</translation>
    </message>
    <message>
        <source>Full screen</source>
        <comment>act.full_screen</comment>
        <translation>Pantalla completa</translation>
    </message>
    <message>
        <source>Actions</source>
        <comment>actions.title</comment>
        <translation>Acciones</translation>
    </message>
    <message>
        <source>Close this strip</source>
        <comment>actions.close</comment>
        <translation>Cerrar esta barra</translation>
    </message>
    <message>
        <source>Next and Back walk, Blank confirms ({next}, {back}, {blank}).</source>
        <comment>actions.walk</comment>
        <translation>Siguiente y Atrás recorren, En negro confirma ({next}, {back}, {blank}).</translation>
    </message>
    <message>
        <source>Closes by itself {seconds} s after the last press.</source>
        <comment>actions.alone</comment>
        <translation>Se cierra sola {seconds} s después de la última pulsación.</translation>
    </message>
    <message>
        <source>{label}, {place} of {count}</source>
        <comment>actions.here</comment>
        <translation>{label}, {place} de {count}</translation>
    </message>
    <message>
        <source>Keys</source>
        <comment>teach.title</comment>
        <translation>Teclas</translation>
    </message>
    <message>
        <source>Choose Teach, then press the button of the remote or the key.</source>
        <comment>teach.help</comment>
        <translation>Elija Enseñar y pulse el botón del mando o la tecla.</translation>
    </message>
    <message>
        <source>Presentation remote</source>
        <comment>teach.remote</comment>
        <translation>Mando de presentación</translation>
    </message>
    <message>
        <source>The show</source>
        <comment>teach.show</comment>
        <translation>La función</translation>
    </message>
    <message>
        <source>While a question is open</source>
        <comment>teach.question</comment>
        <translation>Mientras hay una pregunta abierta</translation>
    </message>
    <message>
        <source>The scene</source>
        <comment>teach.scene</comment>
        <translation>La escena</translation>
    </message>
    <message>
        <source>Light and view</source>
        <comment>teach.view</comment>
        <translation>Luz y vista</translation>
    </message>
    <message>
        <source>Favourites</source>
        <comment>teach.favourites</comment>
        <translation>Favoritos</translation>
    </message>
    <message>
        <source>The window</source>
        <comment>teach.window</comment>
        <translation>La ventana</translation>
    </message>
    <message>
        <source>no key</source>
        <comment>teach.none</comment>
        <translation>sin tecla</translation>
    </message>
    <message>
        <source>Teach</source>
        <comment>teach.teach</comment>
        <translation>Enseñar</translation>
    </message>
    <message>
        <source>Teach one more key for: {label}</source>
        <comment>teach.teach.help</comment>
        <translation>Enseñar otra tecla para: {label}</translation>
    </message>
    <message>
        <source>Take its keys from: {label}</source>
        <comment>teach.clear</comment>
        <translation>Quitar sus teclas a: {label}</translation>
    </message>
    <message>
        <source>Press the button for “{label}” now.</source>
        <comment>teach.press</comment>
        <translation>Pulse ahora el botón para «{label}».</translation>
    </message>
    <message>
        <source>Cancel</source>
        <comment>teach.cancel</comment>
        <translation>Cancelar</translation>
    </message>
    <message>
        <source>Nothing was changed.</source>
        <comment>teach.cancelled</comment>
        <translation>No se cambió nada.</translation>
    </message>
    <message>
        <source>{key} belongs to {others}. Take it for “{label}”?</source>
        <comment>teach.clash</comment>
        <translation>{key} pertenece a {others}. ¿Usarla para «{label}»?</translation>
    </message>
    <message>
        <source>Take it</source>
        <comment>teach.take</comment>
        <translation>Usarla</translation>
    </message>
    <message>
        <source>Leave it</source>
        <comment>teach.keep</comment>
        <translation>Dejarla</translation>
    </message>
    <message>
        <source>{key} is now “{label}”.</source>
        <comment>teach.done</comment>
        <translation>{key} es ahora «{label}».</translation>
    </message>
    <message>
        <source>{key} is now “{label}”, no longer {others}.</source>
        <comment>teach.moved</comment>
        <translation>{key} es ahora «{label}», ya no {others}.</translation>
    </message>
    <message>
        <source>“{label}” has no key now.</source>
        <comment>teach.cleared</comment>
        <translation>«{label}» ya no tiene tecla.</translation>
    </message>
    <message>
        <source>All keys are as at first.</source>
        <comment>teach.defaults</comment>
        <translation>Todas las teclas están como al principio.</translation>
    </message>
    <message>
        <source>Letters, digits, signs as keys</source>
        <comment>teach.characters</comment>
        <translation>Letras, cifras y signos como teclas</translation>
    </message>
    <message>
        <source>Off: a letter does nothing by itself, for people who speak to their computer or hit keys by chance. A sign that the remote sends still works.</source>
        <comment>teach.characters.help</comment>
        <translation>No: una letra sola no hace nada, para quienes hablan a su equipo o pulsan teclas sin querer. Un signo que envía el mando sigue funcionando.</translation>
    </message>
    <message>
        <source>The taught keys cannot be read, so all keys are as at first: {problem}</source>
        <comment>teach.broken</comment>
        <translation>No se pueden leer las teclas enseñadas; todas están como al principio: {problem}</translation>
    </message>
    <message>
        <source>Projector card: set brightness until neighbouring steps can be told apart.</source>
        <comment>projector.title</comment>
        <translation>Carta del proyector: ajuste el brillo hasta distinguir los pasos vecinos.</translation>
    </message>
    <message>
        <source>Grey steps of retardation, as the polarizers show them</source>
        <comment>projector.grey</comment>
        <translation>Pasos grises de retardo, tal como los muestran los polarizadores</translation>
    </message>
    <message>
        <source>The same, brightened {gain} times</source>
        <comment>projector.gain</comment>
        <translation>Los mismos, aclarados {gain} veces</translation>
    </message>
    <message>
        <source>black, white</source>
        <comment>projector.black_white</comment>
        <translation>negro, blanco</translation>
    </message>
    <message>
        <source>Focus: lines of 1, 2 and 3 pixels</source>
        <comment>projector.fine</comment>
        <translation>Enfoque: líneas de 1, 2 y 3 píxeles</translation>
    </message>
    <message>
        <source>Fine print, {px} pixels high: if the first row can read this, the focus is sharp and the picture is not scaled.</source>
        <comment>projector.print</comment>
        <translation>Letra pequeña, {px} píxeles de alto: si la primera fila puede leerla, el enfoque es nítido y la imagen no está escalada.</translation>
    </message>
    <message>
        <source>Frames at 0, 2.5 and 5 % from the edge: all three must be seen whole</source>
        <comment>projector.edges</comment>
        <translation>Marcos a 0, 2,5 y 5 % del borde: los tres deben verse enteros</translation>
    </message>
    <message>
        <source>{percent} %</source>
        <comment>projector.edge</comment>
        <translation>{percent} %</translation>
    </message>
    <message>
        <source>Letters for the back row, from there each line must be easy to read</source>
        <comment>projector.letters</comment>
        <translation>Letras para la última fila: desde allí cada línea debe leerse con facilidad</translation>
    </message>
    <message>
        <source>{arcmin}′, {px} px</source>
        <comment>projector.arcmin</comment>
        <translation>{arcmin}′, {px} px</translation>
    </message>
    <message>
        <source>No room here for {said} and more.</source>
        <comment>projector.too_big</comment>
        <translation>Aquí no caben {said} ni más.</translation>
    </message>
    <message>
        <source>Picture {height} m high, back row at {depth} m</source>
        <comment>projector.hall</comment>
        <translation>Imagen de {height} m de alto, última fila a {depth} m</translation>
    </message>
    <message>
        <source>Picture's height or hall's depth not given: no letter sizes.</source>
        <comment>projector.unknown</comment>
        <translation>Sin altura de imagen o fondo de sala: no hay tamaños de letra.</translation>
    </message>
    <message>
        <source>Calm picture</source>
        <comment>calm</comment>
        <translation>Imagen calmada</translation>
    </message>
    <message>
        <source>Dims bright stripes and lets nothing come up suddenly, below published limits</source>
        <comment>calm.help</comment>
        <translation>Atenúa franjas brillantes y no deja que nada aparezca de golpe, bajo límites publicados</translation>
    </message>
    <message>
        <source>Calm picture: changes are slowed</source>
        <comment>calm.on</comment>
        <translation>Imagen calmada: cambios más lentos</translation>
    </message>
    <message>
        <source>Calm picture: dimmed to {percent} % because of its stripes</source>
        <comment>calm.dimmed</comment>
        <translation>Imagen calmada: atenuada al {percent} % por sus franjas</translation>
    </message>
    <message>
        <source>Language of the windows</source>
        <comment>language</comment>
        <translation>Idioma de las ventanas</translation>
    </message>
    <message>
        <source>As the system</source>
        <comment>language.system</comment>
        <translation>Como el sistema</translation>
    </message>
    <message>
        <source>The windows speak another language from the next start on; what is shown stays as it is.</source>
        <comment>language.later</comment>
        <translation>Las ventanas hablan otro idioma desde el próximo inicio; lo que se muestra sigue como está.</translation>
    </message>
    <message>
        <source>Prep bench</source>
        <comment>bench</comment>
        <translation>Banco de preparación</translation>
    </message>
    <message>
        <source>Plan the glass, the oven and the flame before the doors open.</source>
        <comment>bench.help</comment>
        <translation>Planifique el vidrio, el horno y la llama antes de abrir las puertas.</translation>
    </message>
    <message>
        <source>Lehrlight: prep bench</source>
        <comment>bench.title</comment>
        <translation>Lehrlight: preparación</translation>
    </message>
    <message>
        <source>Questions</source>
        <comment>bench.questions</comment>
        <translation>Preguntas</translation>
    </message>
    <message>
        <source>{number}  {title}</source>
        <comment>bench.item</comment>
        <translation>{number}  {title}</translation>
    </message>
    <message>
        <source>Ctrl+{number}</source>
        <comment>bench.item.help</comment>
        <translation>Ctrl+{number}</translation>
    </message>
    <message>
        <source>Time in the flame</source>
        <comment>bench.flame</comment>
        <translation>Tiempo en la llama</translation>
    </message>
    <message>
        <source>Oven programme</source>
        <comment>bench.oven</comment>
        <translation>Programa de horno</translation>
    </message>
    <message>
        <source>Toughness of a sample</source>
        <comment>bench.toughness</comment>
        <translation>Temple de una muestra</translation>
    </message>
    <message>
        <source>Bubble batch</source>
        <comment>bench.bubbles</comment>
        <translation>Lote de matraces</translation>
    </message>
    <message>
        <source>Reading a colour</source>
        <comment>bench.colour</comment>
        <translation>Leer un color</translation>
    </message>
    <message>
        <source>Matching my own piece</source>
        <comment>bench.matching</comment>
        <translation>Igualar mi propia pieza</translation>
    </message>
    <message>
        <source>What-if map</source>
        <comment>bench.map</comment>
        <translation>Mapa de supuestos</translation>
    </message>
    <message>
        <source>Ctrl+1 to 7 pages · Ctrl+L this list · Tab on · Ctrl+P print · Esc stop</source>
        <comment>bench.keys</comment>
        <translation>Ctrl+1 a 7 páginas · Ctrl+L esta lista · Tab avanzar · Ctrl+P imprimir · Esc parar</translation>
    </message>
    <message>
        <source>What is put in</source>
        <comment>bench.inputs</comment>
        <translation>Qué se introduce</translation>
    </message>
    <message>
        <source>Answer; arrow keys scroll</source>
        <comment>bench.answer</comment>
        <translation>Respuesta; flechas para desplazar</translation>
    </message>
    <message>
        <source>Holds only so far</source>
        <comment>bench.limits</comment>
        <translation>Vale solo hasta aquí</translation>
    </message>
    <message>
        <source>Chart of {up} over {across}: {curves}</source>
        <comment>bench.chart</comment>
        <translation>Gráfica de {up} frente a {across}: {curves}</translation>
    </message>
    <message>
        <source>from {low} to {high}</source>
        <comment>bench.range</comment>
        <translation>de {low} a {high}</translation>
    </message>
    <message>
        <source>hardly any spread</source>
        <comment>bench.no_range</comment>
        <translation>apenas dispersión</translation>
    </message>
    <message>
        <source>{low} to {high}</source>
        <comment>bench.span</comment>
        <translation>{low} a {high}</translation>
    </message>
    <message>
        <source>hardly ever</source>
        <comment>bench.hardly</comment>
        <translation>casi nunca</translation>
    </message>
    <message>
        <source>nearly always</source>
        <comment>bench.nearly</comment>
        <translation>casi siempre</translation>
    </message>
    <message>
        <source>about {count} in 10</source>
        <comment>bench.in_ten</comment>
        <translation>unos {count} de 10</translation>
    </message>
    <message>
        <source>about {count} in 20</source>
        <comment>bench.in_twenty</comment>
        <translation>unos {count} de 20</translation>
    </message>
    <message>
        <source>The inputs have changed: what stands here answers the earlier ones.</source>
        <comment>bench.old</comment>
        <translation>Los datos han cambiado: lo que hay aquí responde a los anteriores.</translation>
    </message>
    <message>
        <source>No answer: one of the inputs cannot be; the line beside it says which.</source>
        <comment>bench.no_answer</comment>
        <translation>Sin respuesta: un dato no es posible; la línea de al lado dice cuál.</translation>
    </message>
    <message>
        <source>Working it out …</source>
        <comment>bench.working</comment>
        <translation>Calculando …</translation>
    </message>
    <message>
        <source>Runs that make the ranges sharp</source>
        <comment>bench.progress</comment>
        <translation>Pasadas que afinan los intervalos</translation>
    </message>
    <message>
        <source>{done} of {most}</source>
        <comment>bench.done</comment>
        <translation>{done} de {most}</translation>
    </message>
    <message>
        <source>Stop</source>
        <comment>bench.stop</comment>
        <translation>Parar</translation>
    </message>
    <message>
        <source>Go on</source>
        <comment>bench.again</comment>
        <translation>Seguir</translation>
    </message>
    <message>
        <source>Stopped before there was an answer.</source>
        <comment>bench.stopped</comment>
        <translation>Parado antes de tener una respuesta.</translation>
    </message>
    <message>
        <source>Stopped; what stands here is what was known by then. {state}</source>
        <comment>bench.stopped.at</comment>
        <translation>Parado; lo que hay aquí es lo que se sabía hasta entonces. {state}</translation>
    </message>
    <message>
        <source>Print …</source>
        <comment>bench.print</comment>
        <translation>Imprimir …</translation>
    </message>
    <message>
        <source>This answer as a PDF, with inputs, limits and caution (Ctrl+P)</source>
        <comment>bench.print.help</comment>
        <translation>Esta respuesta en PDF, con datos, límites y precaución (Ctrl+P)</translation>
    </message>
    <message>
        <source>Could not print: {problem}</source>
        <comment>bench.unprinted</comment>
        <translation>No se pudo imprimir: {problem}</translation>
    </message>
    <message>
        <source>Something went wrong: {problem}</source>
        <comment>bench.fault</comment>
        <translation>Algo falló: {problem}</translation>
    </message>
    <message>
        <source>the process that works it out has ended; ask again</source>
        <comment>bench.lost</comment>
        <translation>el proceso que lo calcula ha terminado; vuelva a preguntar</translation>
    </message>
    <message>
        <source>Pick the colour that you see without the tint plate</source>
        <comment>bench.pick.bare</comment>
        <translation>Elija el color que ve sin la lámina de onda</translation>
    </message>
    <message>
        <source>Pick the colour that you see with the tint plate in</source>
        <comment>bench.pick.plate</comment>
        <translation>Elija el color que ve con la lámina de onda puesta</translation>
    </message>
    <message>
        <source>Left and Right: 5 nm; Page Up and Page Down: 50 nm; or the mouse</source>
        <comment>bench.picker.help</comment>
        <translation>Izquierda y derecha: 5 nm; Re Pág y Av Pág: 50 nm; o el ratón</translation>
    </message>
    <message>
        <source>{nm} nm: plain {bare}; with the plate {adds} where it adds, {takes} where it takes away (patches from left to right)</source>
        <comment>bench.tint</comment>
        <translation>{nm} nm: sin lámina {bare}; con ella {adds} donde suma, {takes} donde resta (muestras de izquierda a derecha)</translation>
    </message>
    <message>
        <source>Keep as device</source>
        <comment>bench.keep</comment>
        <translation>Guardar como aparato</translation>
    </message>
    <message>
        <source>Replace it</source>
        <comment>bench.keep.over</comment>
        <translation>Sustituirlo</translation>
    </message>
    <message>
        <source>Name of your device, such as Jets of the big frame</source>
        <comment>bench.keep.name</comment>
        <translation>Nombre de su aparato, como Chorros del marco grande</translation>
    </message>
    <message>
        <source>Every scene and 'lehrlight solve --device' can use it then</source>
        <comment>bench.keep.help</comment>
        <translation>Toda escena y 'lehrlight solve --device' pueden usarlo después</translation>
    </message>
    <message>
        <source>'{name}' is there already: press again to put this value in its place.</source>
        <comment>bench.keep.there</comment>
        <translation>'{name}' ya existe: pulse otra vez para poner este valor en su lugar.</translation>
    </message>
    <message>
        <source>'{name}' is kept; use it with --device {id}. File: {path}</source>
        <comment>bench.kept</comment>
        <translation>'{name}' está guardado; úselo con --device {id}. Archivo: {path}</translation>
    </message>
    <message>
        <source>How does a reading change over two settings, and where does the verdict change?</source>
        <comment>bench.map.help</comment>
        <translation>¿Cómo cambia una lectura con dos ajustes, y dónde cambia el veredicto?</translation>
    </message>
    <message>
        <source>Across</source>
        <comment>bench.map.across</comment>
        <translation>Horizontal</translation>
    </message>
    <message>
        <source>Up</source>
        <comment>bench.map.up</comment>
        <translation>Vertical</translation>
    </message>
    <message>
        <source>from</source>
        <comment>bench.map.from</comment>
        <translation>de</translation>
    </message>
    <message>
        <source>to</source>
        <comment>bench.map.to</comment>
        <translation>a</translation>
    </message>
    <message>
        <source>points</source>
        <comment>bench.map.points</comment>
        <translation>puntos</translation>
    </message>
    <message>
        <source>Reading in colours</source>
        <comment>bench.map.reading</comment>
        <translation>Lectura en colores</translation>
    </message>
    <message>
        <source>Border of</source>
        <comment>bench.map.verdict</comment>
        <translation>Frontera de</translation>
    </message>
    <message>
        <source>No border</source>
        <comment>bench.map.no_verdict</comment>
        <translation>Sin frontera</translation>
    </message>
    <message>
        <source>Make the map</source>
        <comment>bench.map.run</comment>
        <translation>Hacer el mapa</translation>
    </message>
    <message>
        <source>The processes are starting …</source>
        <comment>bench.map.begins</comment>
        <translation>Los procesos están arrancando …</translation>
    </message>
    <message>
        <source>{done} of {count} points are done and kept on the disk.</source>
        <comment>bench.map.running</comment>
        <translation>{done} de {count} puntos están hechos y guardados en el disco.</translation>
    </message>
    <message>
        <source>Stopping after the points in hand …</source>
        <comment>bench.map.stopping</comment>
        <translation>Se detiene tras los puntos en curso …</translation>
    </message>
    <message>
        <source>All {count} points are done; {refused} of them cannot be.</source>
        <comment>bench.map.whole</comment>
        <translation>Los {count} puntos están hechos; {refused} de ellos no son posibles.</translation>
    </message>
    <message>
        <source>Stopped: {done} of {count} points are done. The same map goes on from here, also another day.</source>
        <comment>bench.map.part</comment>
        <translation>Parado: {done} de {count} puntos están hechos. El mismo mapa sigue desde aquí, también otro día.</translation>
    </message>
    <message>
        <source>The verdict is the same all over, or no verdict: there is no border.</source>
        <comment>bench.map.no_border</comment>
        <translation>El veredicto es el mismo en todas partes, o no lo hay: no hay frontera.</translation>
    </message>
    <message>
        <source>Other choices stand on the left than those of the map shown.</source>
        <comment>bench.map.other</comment>
        <translation>A la izquierda hay otra elección que la del mapa mostrado.</translation>
    </message>
    <message>
        <source>Colours: {reading}</source>
        <comment>bench.map.colours</comment>
        <translation>Colores: {reading}</translation>
    </message>
    <message>
        <source>cannot be</source>
        <comment>bench.map.refused</comment>
        <translation>no es posible</translation>
    </message>
    <message>
        <source>not run yet</source>
        <comment>bench.map.not_yet</comment>
        <translation>aún sin calcular</translation>
    </message>
    <message>
        <source>Arrow keys choose a point; the line below tells its values.</source>
        <comment>bench.map.point</comment>
        <translation>Las flechas eligen un punto; la línea de abajo dice sus valores.</translation>
    </message>
    <message>
        <source>Save table …</source>
        <comment>bench.csv</comment>
        <translation>Guardar tabla …</translation>
    </message>
    <message>
        <source>All points with the settings as a CSV file (Ctrl+S)</source>
        <comment>bench.csv.help</comment>
        <translation>Todos los puntos con los ajustes en un archivo CSV (Ctrl+S)</translation>
    </message>
    <message>
        <source>Outreach</source>
        <comment>outreach</comment>
        <translation>En la escuela</translation>
    </message>
    <message>
        <source>A whole lesson for a class: no flame, no breakage, predictions and tasks.</source>
        <comment>outreach.help</comment>
        <translation>Una clase entera: sin llama, sin roturas, con predicciones y tareas.</translation>
    </message>
    <message>
        <source>Which lesson?</source>
        <comment>outreach.choose</comment>
        <translation>¿Qué clase?</translation>
    </message>
    <message>
        <source>{ages} · {minutes} min · {steps} steps</source>
        <comment>outreach.choose.note</comment>
        <translation>{ages} · {minutes} min · {steps} pasos</translation>
    </message>
    <message>
        <source>Open another lesson …</source>
        <comment>outreach.choose.other</comment>
        <translation>Abrir otra clase …</translation>
    </message>
    <message>
        <source>Begin the lesson ▶</source>
        <comment>outreach.begin</comment>
        <translation>Empezar la clase ▶</translation>
    </message>
    <message>
        <source>Hand over to the group ▶</source>
        <comment>outreach.drive</comment>
        <translation>Pasar al grupo ▶</translation>
    </message>
    <message>
        <source>Back to the lesson ▶</source>
        <comment>outreach.share</comment>
        <translation>Volver a la clase ▶</translation>
    </message>
    <message>
        <source>◀ Back to the lesson</source>
        <comment>outreach.back</comment>
        <translation>◀ Volver a la clase</translation>
    </message>
    <message>
        <source>“{label}” is not part of this lesson here.</source>
        <comment>outreach.refused</comment>
        <translation>«{label}» no forma parte de esta clase.</translation>
    </message>
    <message>
        <source>Ages {low} to {high}</source>
        <comment>outreach.ages</comment>
        <translation>De {low} a {high} años</translation>
    </message>
    <message>
        <source>For adults</source>
        <comment>outreach.adults</comment>
        <translation>Para adultos</translation>
    </message>
    <message>
        <source>First write your own letter on paper. Nobody speaks yet.</source>
        <comment>outreach.paper</comment>
        <translation>Primero escribid vuestra letra en el papel. Que nadie hable aún.</translation>
    </message>
    <message>
        <source>Hands up for the letter that you wrote.</source>
        <comment>outreach.count</comment>
        <translation>Levantad la mano por la letra que habéis escrito.</translation>
    </message>
    <message>
        <source>Nobody is told yet. Let us look.</source>
        <comment>outreach.bars</comment>
        <translation>Aún no se dice nada. Vamos a mirar.</translation>
    </message>
    <message>
        <source>Now vote once more</source>
        <comment>outreach.again</comment>
        <translation>Ahora votad otra vez</translation>
    </message>
    <message>
        <source>Write a second letter beside the first, in silence.</source>
        <comment>outreach.again.paper</comment>
        <translation>Escribid en silencio una segunda letra junto a la primera.</translation>
    </message>
    <message>
        <source>Read the letter that you wrote first. Would you write it again?</source>
        <comment>outreach.again.line</comment>
        <translation>Leed la letra que escribisteis primero. ¿La escribiríais otra vez?</translation>
    </message>
    <message>
        <source>Write your answer on the slip before you go.</source>
        <comment>outreach.exit</comment>
        <translation>Escribid la respuesta en el papel antes de salir.</translation>
    </message>
    <message>
        <source>You may change: {labels}</source>
        <comment>outreach.may</comment>
        <translation>Podéis cambiar: {labels}</translation>
    </message>
    <message>
        <source>You may change</source>
        <comment>outreach.may.title</comment>
        <translation>Podéis cambiar</translation>
    </message>
    <message>
        <source>First agree on what you would try, and write it down.</source>
        <comment>outreach.first</comment>
        <translation>Primero poneos de acuerdo en qué probar y escribidlo.</translation>
    </message>
    <message>
        <source>Tell the others: what did you change, and what happened?</source>
        <comment>outreach.tell</comment>
        <translation>Contad a los demás: ¿qué cambiasteis y qué pasó?</translation>
    </message>
    <message>
        <source>Tell the others: what did you change, and why?</source>
        <comment>outreach.why</comment>
        <translation>Contad a los demás: ¿qué cambiasteis y por qué?</translation>
    </message>
    <message>
        <source>Try it</source>
        <comment>outreach.try</comment>
        <translation>Probar</translation>
    </message>
    <message>
        <source>Show the result</source>
        <comment>outreach.look</comment>
        <translation>Ver el resultado</translation>
    </message>
    <message>
        <source>The model works it out …</source>
        <comment>outreach.working</comment>
        <translation>El modelo está calculando …</translation>
    </message>
    <message>
        <source>Next group</source>
        <comment>outreach.fresh</comment>
        <translation>Grupo siguiente</translation>
    </message>
    <message>
        <source>Hint</source>
        <comment>outreach.hint</comment>
        <translation>Pista</translation>
    </message>
    <message>
        <source>Tries: {count}</source>
        <comment>outreach.tries</comment>
        <translation>Intentos: {count}</translation>
    </message>
    <message>
        <source>No try yet</source>
        <comment>outreach.ready</comment>
        <translation>Ningún intento aún</translation>
    </message>
    <message>
        <source>✓ Reached at try {count}</source>
        <comment>outreach.reached</comment>
        <translation>✓ Logrado en el intento {count}</translation>
    </message>
    <message>
        <source>✗ Not reached yet</source>
        <comment>outreach.not_yet</comment>
        <translation>✗ Aún sin lograr</translation>
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
        <translation>Lo mejor hasta ahora: {label} {value}</translation>
    </message>
    <message>
        <source>Groups that reached it: {count} of {groups}</source>
        <comment>outreach.by</comment>
        <translation>Grupos que lo han logrado: {count} de {groups}</translation>
    </message>
    <message>
        <source>Largest retardation in the middle</source>
        <comment>outreach.peak</comment>
        <translation>Mayor retardo en el centro</translation>
    </message>
    <message>
        <source>{ask}  ·  {tries}</source>
        <comment>outreach.goal.line</comment>
        <translation>{ask}  ·  {tries}</translation>
    </message>
    <message>
        <source>The model cannot work that out: {problem}</source>
        <comment>outreach.failed</comment>
        <translation>El modelo no puede calcularlo: {problem}</translation>
    </message>
    <message>
        <source>Tries end with the task: begin the next one with Try it.</source>
        <comment>outreach.interrupted</comment>
        <translation>Los intentos acaban con la tarea: empiece el siguiente con Probar.</translation>
    </message>
    <message>
        <source>Votes</source>
        <comment>page.votes</comment>
        <translation>Votos</translation>
    </message>
    <message>
        <source>Paper</source>
        <comment>page.handout</comment>
        <translation>Papel</translation>
    </message>
    <message>
        <source>Lesson</source>
        <comment>page.lesson</comment>
        <translation>Clase</translation>
    </message>
    <message>
        <source>Votes before and after</source>
        <comment>votes.title</comment>
        <translation>Votos antes y después</translation>
    </message>
    <message>
        <source>No hands have been counted yet.</source>
        <comment>votes.none</comment>
        <translation>Aún no se han contado manos.</translation>
    </message>
    <message>
        <source>before</source>
        <comment>votes.before</comment>
        <translation>antes</translation>
    </message>
    <message>
        <source>after</source>
        <comment>votes.after</comment>
        <translation>después</translation>
    </message>
    <message>
        <source>not counted yet</source>
        <comment>votes.after.none</comment>
        <translation>aún sin contar</translation>
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
        <translation>Solo se cuentan manos: sin nombres, y estos números no delatan a nadie.</translation>
    </message>
    <message>
        <source>Gained {percent} % of what could be gained</source>
        <comment>votes.gain</comment>
        <translation>Ganado el {percent} % de lo que se podía ganar</translation>
    </message>
    <message>
        <source>Save as a table …</source>
        <comment>votes.save</comment>
        <translation>Guardar como tabla …</translation>
    </message>
    <message>
        <source>Kept in {path}</source>
        <comment>votes.kept</comment>
        <translation>Guardado en {path}</translation>
    </message>
    <message>
        <source>The votes are not on the disk: save them as a table before you close.</source>
        <comment>votes.unkept</comment>
        <translation>Los votos no están en el disco: guárdelos como tabla antes de cerrar.</translation>
    </message>
    <message>
        <source>The votes are not on the disk. Close again within {seconds} s to leave them.</source>
        <comment>votes.close</comment>
        <translation>Los votos no están en el disco. Cierre otra vez antes de {seconds} s para perderlos.</translation>
    </message>
    <message>
        <source>Paper for the class</source>
        <comment>handout.title</comment>
        <translation>Papel para la clase</translation>
    </message>
    <message>
        <source>A worksheet and its answer key come from the same number: the class gets the one, you keep the other. Print in black and white.</source>
        <comment>handout.help</comment>
        <translation>La hoja de trabajo y sus soluciones salen del mismo número: la clase recibe la una y usted guarda las otras. Imprima en blanco y negro.</translation>
    </message>
    <message>
        <source>Number of the worksheet</source>
        <comment>handout.seed</comment>
        <translation>Número de la hoja de trabajo</translation>
    </message>
    <message>
        <source>Another number</source>
        <comment>handout.other</comment>
        <translation>Otro número</translation>
    </message>
    <message>
        <source>Paper size</source>
        <comment>handout.paper</comment>
        <translation>Tamaño del papel</translation>
    </message>
    <message>
        <source>Save worksheet and key …</source>
        <comment>handout.save</comment>
        <translation>Guardar hoja y soluciones …</translation>
    </message>
    <message>
        <source>The model computes every number of the worksheet …</source>
        <comment>handout.busy</comment>
        <translation>El modelo calcula cada número de la hoja …</translation>
    </message>
    <message>
        <source>Saved: {paths}</source>
        <comment>handout.saved</comment>
        <translation>Guardado: {paths}</translation>
    </message>
    <message>
        <source>Kit</source>
        <comment>handout.kit</comment>
        <translation>Material</translation>
    </message>
    <message>
        <source>What pupils commonly believe, and how to meet it</source>
        <comment>handout.beliefs</comment>
        <translation>Qué suele creer el alumnado y cómo abordarlo</translation>
    </message>
    <message>
        <source>allergens</source>
        <comment>hazard.allergens</comment>
        <translation>alérgenos</translation>
    </message>
    <message>
        <source>small parts</source>
        <comment>hazard.small-parts</comment>
        <translation>piezas pequeñas</translation>
    </message>
    <message>
        <source>warm lamp</source>
        <comment>hazard.warm-lamp</comment>
        <translation>lámpara caliente</translation>
    </message>
</context>
<context>
    <name>short</name>
    <message>
        <source>Bubble</source>
        <comment>bubble</comment>
        <translation>Matraz</translation>
    </message>
    <message>
        <source>Cooling</source>
        <comment>cooling</comment>
        <translation>Enfriado</translation>
    </message>
    <message>
        <source>Dish</source>
        <comment>dish</comment>
        <translation>Bandeja</translation>
    </message>
    <message>
        <source>Light table</source>
        <comment>light-table</comment>
        <translation>Mesa de luz</translation>
    </message>
    <message>
        <source>Pour</source>
        <comment>pour</comment>
        <translation>Vasos</translation>
    </message>
    <message>
        <source>Push pull</source>
        <comment>push-pull</comment>
        <translation>Empuje y tirón</translation>
    </message>
    <message>
        <source>Ring</source>
        <comment>ring</comment>
        <translation>Botella</translation>
    </message>
    <message>
        <source>Touch</source>
        <comment>touch</comment>
        <translation>Toque cálido</translation>
    </message>
    <message>
        <source>Toughen</source>
        <comment>toughen</comment>
        <translation>Templar</translation>
    </message>
</context>
<context>
    <name>view</name>
    <message>
        <source>Daylight</source>
        <comment>choice.lamp.daylight</comment>
        <translation>Luz de día</translation>
    </message>
    <message>
        <source>Incandescent</source>
        <comment>choice.lamp.incandescent</comment>
        <translation>Incandescente</translation>
    </message>
    <message>
        <source>White led</source>
        <comment>choice.lamp.white-led</comment>
        <translation>LED blanca</translation>
    </message>
    <message>
        <source>Sodium</source>
        <comment>choice.lamp.sodium</comment>
        <translation>Sodio</translation>
    </message>
    <message>
        <source>Green</source>
        <comment>choice.lamp.green</comment>
        <translation>Verde</translation>
    </message>
    <message>
        <source>Temperature</source>
        <comment>choice.section.temperature</comment>
        <translation>Temperatura</translation>
    </message>
    <message>
        <source>Stress</source>
        <comment>choice.section.stress</comment>
        <translation>Tensión</translation>
    </message>
</context>
<context>
    <name>venue</name>
    <message>
        <source>Audience's distance</source>
        <comment>audience_distance_m</comment>
        <translation>Distancia del público</translation>
    </message>
    <message>
        <source>From flame and breakage to the nearest seat, m, as your assessment says.</source>
        <comment>audience_distance_m.ask</comment>
        <translation>De la llama y la rotura al asiento más cercano, m, según su evaluación.</translation>
    </message>
    <message>
        <source>Eyewear, presenter</source>
        <comment>eyewear_presenter</comment>
        <translation>Protección ocular, presentador</translation>
    </message>
    <message>
        <source>What the presenter wears, and when.</source>
        <comment>eyewear_presenter.ask</comment>
        <translation>Qué lleva quien presenta, y cuándo.</translation>
    </message>
    <message>
        <source>Eyewear, helpers</source>
        <comment>eyewear_helpers</comment>
        <translation>Protección ocular, ayudantes</translation>
    </message>
    <message>
        <source>What a helper wears who comes up, and when.</source>
        <comment>eyewear_helpers.ask</comment>
        <translation>Qué lleva el ayudante que sube, y cuándo.</translation>
    </message>
    <message>
        <source>Eyewear, audience</source>
        <comment>eyewear_audience</comment>
        <translation>Protección ocular, público</translation>
    </message>
    <message>
        <source>What the audience wears, or why nothing.</source>
        <comment>eyewear_audience.ask</comment>
        <translation>Qué lleva el público, o por qué nada.</translation>
    </message>
    <message>
        <source>Approves the show</source>
        <comment>approver</comment>
        <translation>Aprueba la demostración</translation>
    </message>
    <message>
        <source>The role that approves flame and breakage; no name.</source>
        <comment>approver.ask</comment>
        <translation>El cargo que aprueba llama y rotura; sin nombre.</translation>
    </message>
    <message>
        <source>Extinguisher</source>
        <comment>extinguisher_place</comment>
        <translation>Extintor</translation>
    </message>
    <message>
        <source>Where it hangs, and of which kind.</source>
        <comment>extinguisher_place.ask</comment>
        <translation>Dónde cuelga, y de qué tipo.</translation>
    </message>
    <message>
        <source>Burner's shut-off</source>
        <comment>burner_shut_off_place</comment>
        <translation>Cierre del quemador</translation>
    </message>
    <message>
        <source>Where the fuel is shut off.</source>
        <comment>burner_shut_off_place.ask</comment>
        <translation>Dónde se cierra el combustible.</translation>
    </message>
    <message>
        <source>Exits</source>
        <comment>exits</comment>
        <translation>Salidas</translation>
    </message>
    <message>
        <source>Each way out, as it is announced.</source>
        <comment>exits.ask</comment>
        <translation>Cada salida, tal como se anuncia.</translation>
    </message>
    <message>
        <source>Assembly point</source>
        <comment>assembly_point</comment>
        <translation>Punto de reunión</translation>
    </message>
    <message>
        <source>Where everybody meets outside.</source>
        <comment>assembly_point.ask</comment>
        <translation>Dónde se reúnen todos fuera.</translation>
    </message>
    <message>
        <source>Emergency number</source>
        <comment>emergency_number</comment>
        <translation>Número de emergencia</translation>
    </message>
    <message>
        <source>What to dial from this room.</source>
        <comment>emergency_number.ask</comment>
        <translation>Qué se marca desde esta sala.</translation>
    </message>
    <message>
        <source>First aid</source>
        <comment>first_aid</comment>
        <translation>Primeros auxilios</translation>
    </message>
    <message>
        <source>Where the box is, and the role that helps.</source>
        <comment>first_aid.ask</comment>
        <translation>Dónde está el botiquín, y qué cargo ayuda.</translation>
    </message>
    <message>
        <source>Sound and flash warning</source>
        <comment>warning</comment>
        <translation>Aviso de ruidos y destellos</translation>
    </message>
    <message>
        <source>What is said of bangs, light and flashes before.</source>
        <comment>warning.ask</comment>
        <translation>Qué se dice antes de estallidos, luz y destellos.</translation>
    </message>
    <message>
        <source>Hall's depth</source>
        <comment>hall_depth_m</comment>
        <translation>Fondo de la sala</translation>
    </message>
    <message>
        <source>Screen to the last row, m.</source>
        <comment>hall_depth_m.ask</comment>
        <translation>De la pantalla a la última fila, m.</translation>
    </message>
    <message>
        <source>Picture's height</source>
        <comment>picture_height_m</comment>
        <translation>Altura de la imagen</translation>
    </message>
    <message>
        <source>Of the projected picture, m.</source>
        <comment>picture_height_m.ask</comment>
        <translation>De la imagen proyectada, m.</translation>
    </message>
    <message>
        <source>Picture's width</source>
        <comment>picture_width_m</comment>
        <translation>Anchura de la imagen</translation>
    </message>
    <message>
        <source>Of the projected picture, m.</source>
        <comment>picture_width_m.ask</comment>
        <translation>De la imagen proyectada, m.</translation>
    </message>
</context>
<context>
    <name>review</name>
    <message>
        <source>Missing: ask who approves the show</source>
        <comment>missing</comment>
        <translation>Falta: pregunte quién aprueba la demostración</translation>
    </message>
    <message>
        <source>Reviewed by {role} on {day}</source>
        <comment>reviewed</comment>
        <translation>Revisado por {role} el {day}</translation>
    </message>
    <message>
        <source>Review out of date: by {role} on {day}</source>
        <comment>late</comment>
        <translation>Revisión caducada: por {role} el {day}</translation>
    </message>
    <message>
        <source>Not reviewed: the review by {role} on {day} lies ahead</source>
        <comment>ahead</comment>
        <translation>Sin revisar: la revisión de {role} del {day} es futura</translation>
    </message>
    <message>
        <source>Not reviewed: how long the review by {role} on {day} holds is not said</source>
        <comment>days</comment>
        <translation>Sin revisar: no se dice cuánto vale la revisión de {role} del {day}</translation>
    </message>
    <message>
        <source>Not reviewed yet</source>
        <comment>never</comment>
        <translation>Aún sin revisar</translation>
    </message>
</context>
<context>
    <name>checklist</name>
    <message>
        <source>Follow your venue's approved assessment; if this differs, theirs wins.</source>
        <comment>follow</comment>
        <translation>Siga la evaluación aprobada de su centro; si difiere de esto, prevalece la suya.</translation>
    </message>
    <message>
        <source>presenter: eyewear for {hazard}</source>
        <comment>presenter</comment>
        <translation>presentador: protección ocular para {hazard}</translation>
    </message>
    <message>
        <source>helper: {eyewear}</source>
        <comment>helper</comment>
        <translation>ayudante: {eyewear}</translation>
    </message>
    <message>
        <source>Flame out, fuel shut off.</source>
        <comment>flame</comment>
        <translation>Llama apagada, combustible cerrado.</translation>
    </message>
    <message>
        <source>Hot pieces stay on the mat, marked hot, until they have been checked cold.</source>
        <comment>hot</comment>
        <translation>Las piezas calientes quedan en la estera, marcadas, hasta comprobar que están frías.</translation>
    </message>
    <message>
        <source>Hot water emptied, floor dry.</source>
        <comment>water</comment>
        <translation>Agua caliente vaciada, suelo seco.</translation>
    </message>
    <message>
        <source>Shards brushed up into the labelled container; table and floor looked over.</source>
        <comment>shards</comment>
        <translation>Fragmentos barridos al recipiente rotulado; mesa y suelo revisados.</translation>
    </message>
    <message>
        <source>Pieces counted in; what broke is written down; new ones counted out.</source>
        <comment>pieces</comment>
        <translation>Piezas contadas al volver; lo roto, anotado; las nuevas, contadas.</translation>
    </message>
    <message>
        <source>Props back in their places.</source>
        <comment>props</comment>
        <translation>Material otra vez en su sitio.</translation>
    </message>
    <message>
        <source>Eyewear wiped and back on its hooks.</source>
        <comment>eyewear</comment>
        <translation>Gafas limpias y otra vez en sus ganchos.</translation>
    </message>
    <message>
        <source>Counts of hands cleared.</source>
        <comment>hands</comment>
        <translation>Recuentos de manos borrados.</translation>
    </message>
    <message>
        <source>The sheet is back at its first step.</source>
        <comment>first</comment>
        <translation>El guion está otra vez en su primer paso.</translation>
    </message>
    <message>
        <source>Attendance, near misses and odd questions are written down.</source>
        <comment>journal</comment>
        <translation>Asistencia, incidentes y preguntas curiosas están anotados.</translation>
    </message>
    <message>
        <source>flame</source>
        <comment>hazard.flame</comment>
        <translation>llama</translation>
    </message>
    <message>
        <source>hot-glass</source>
        <comment>hazard.hot-glass</comment>
        <translation>vidrio caliente</translation>
    </message>
    <message>
        <source>breakage</source>
        <comment>hazard.breakage</comment>
        <translation>rotura</translation>
    </message>
    <message>
        <source>hot-water</source>
        <comment>hazard.hot-water</comment>
        <translation>agua caliente</translation>
    </message>
    <message>
        <source>stored-energy</source>
        <comment>hazard.stored-energy</comment>
        <translation>energía almacenada</translation>
    </message>
</context>
<context>
    <name>hot</name>
    <message>
        <source>Tongs and the insulated mat; hot glass looks cold.</source>
        <comment>handle</comment>
        <translation>Pinzas y la estera aislante; el vidrio caliente parece frío.</translation>
    </message>
    <message>
        <source>{name}: hot. {handle}</source>
        <comment>always</comment>
        <translation>{name}: caliente. {handle}</translation>
    </message>
    <message>
        <source>{name}: hot until at least {until}. {handle}</source>
        <comment>hot</comment>
        <translation>{name}: caliente al menos hasta {until}. {handle}</translation>
    </message>
    <message>
        <source>{name}: was hot until at least {until} and may be still. {handle}</source>
        <comment>was</comment>
        <translation>{name}: estuvo caliente al menos hasta {until} y quizá siga así. {handle}</translation>
    </message>
</context>
<context>
    <name>pieces</name>
    <message>
        <source>{batch}: {out} out, {back} back, {broken} broken: the count balances</source>
        <comment>even</comment>
        <translation>{batch}: {out} salieron, {back} volvieron, {broken} rotas: la cuenta cuadra</translation>
    </message>
    <message>
        <source>{batch}: {out} out, {back} back, {broken} broken: {apart} not found yet, look for them before anybody comes in</source>
        <comment>short</comment>
        <translation>{batch}: {out} salieron, {back} volvieron, {broken} rotas: {apart} sin encontrar, búsquelas antes de que entre nadie</translation>
    </message>
    <message>
        <source>{batch}: {out} out, {back} back, {broken} broken: {apart} more than went out, count again</source>
        <comment>over</comment>
        <translation>{batch}: {out} salieron, {back} volvieron, {broken} rotas: {apart} más de las que salieron, cuente otra vez</translation>
    </message>
</context>
<context>
    <name>bench</name>
    <message>
        <source>This prepares a demonstration. It never clears a piece of glass for use, and no number here says that a real piece is safe.</source>
        <comment>caution_show</comment>
        <translation>Esto prepara una demostración. Nunca autoriza el uso de una pieza de vidrio, y ningún número de aquí dice que una pieza real sea segura.</translation>
    </message>
    <message>
        <source>It does not replace your venue's assessment: where the two differ, theirs wins.</source>
        <comment>caution_venue</comment>
        <translation>No sustituye la evaluación de su centro: donde difieran, prevalece la suya.</translation>
    </message>
    <message>
        <source>A range holds nine of ten cases within the tolerances that are stated; what nobody stated is not in it.</source>
        <comment>limit_range</comment>
        <translation>Un intervalo contiene nueve de cada diez casos dentro de las tolerancias indicadas; lo que nadie indicó no está en él.</translation>
    </message>
    <message>
        <source>The glass is taken as the file '{glass}' has it; another maker's may differ by some percent in every value.</source>
        <comment>limit_glass</comment>
        <translation>El vidrio se toma como lo da el archivo «{glass}»; el de otro fabricante puede diferir algunos puntos por ciento en cada valor.</translation>
    </message>
    <message>
        <source>This is a first estimate; the runs that make the ranges sharp are still to come.</source>
        <comment>first</comment>
        <translation>Esta es una primera estimación; faltan las pasadas que afinan los intervalos.</translation>
    </message>
    <message>
        <source>share</source>
        <comment>share</comment>
        <translation>parte</translation>
    </message>
    <message>
        <source>probability</source>
        <comment>probability</comment>
        <translation>probabilidad</translation>
    </message>
    <message>
        <source>Worked out, with no chances drawn.</source>
        <comment>drawn_none</comment>
        <translation>Calculado, sin sorteo al azar.</translation>
    </message>
    <message>
        <source>{runs} of {most} runs, seed {seed}.</source>
        <comment>drawn</comment>
        <translation>{runs} de {most} pasadas, semilla {seed}.</translation>
    </message>
    <message>
        <source>none</source>
        <comment>nothing</comment>
        <translation>ninguno</translation>
    </message>
    <message>
        <source>under {percent}</source>
        <comment>under</comment>
        <translation>menos de {percent}</translation>
    </message>
    <message>
        <source>over {percent}</source>
        <comment>over</comment>
        <translation>más de {percent}</translation>
    </message>
    <message>
        <source>What makes it spread</source>
        <comment>matters</comment>
        <translation>De dónde viene la dispersión</translation>
    </message>
    <message>
        <source>tolerance</source>
        <comment>of</comment>
        <translation>tolerancia</translation>
    </message>
    <message>
        <source>wall</source>
        <comment>by_wall</comment>
        <translation>pared</translation>
    </message>
    <message>
        <source>flame</source>
        <comment>by_flame</comment>
        <translation>llama</translation>
    </message>
    <message>
        <source>where the drop lands</source>
        <comment>by_aim</comment>
        <translation>dónde cae la gota</translation>
    </message>
    <message>
        <source>thickness</source>
        <comment>by_thick</comment>
        <translation>espesor</translation>
    </message>
    <message>
        <source>the oven's thermometer</source>
        <comment>by_error</comment>
        <translation>termómetro del horno</translation>
    </message>
    <message>
        <source>air and draught</source>
        <comment>by_air</comment>
        <translation>aire y corriente</translation>
    </message>
    <message>
        <source>start of the jets</source>
        <comment>by_start</comment>
        <translation>inicio de los chorros</translation>
    </message>
    <message>
        <source>jets</source>
        <comment>by_jets</comment>
        <translation>chorros</translation>
    </message>
    <message>
        <source>reading</source>
        <comment>by_reading</comment>
        <translation>lectura</translation>
    </message>
    <message>
        <source>from the middle to the surface</source>
        <comment>by_ratio</comment>
        <translation>del centro a la superficie</translation>
    </message>
    <message>
        <source>foot</source>
        <comment>by_base</comment>
        <translation>fondo</translation>
    </message>
    <message>
        <source>together, or not in proportion</source>
        <comment>by_rest</comment>
        <translation>juntas, o sin proporción</translation>
    </message>
    <message>
        <source>What makes most of the spread is the wall: measure it.</source>
        <comment>most_wall</comment>
        <translation>La mayor parte de la dispersión viene de la pared: mídala.</translation>
    </message>
    <message>
        <source>What makes most of the spread is the flame: set it by a gauge, not by eye.</source>
        <comment>most_flame</comment>
        <translation>La mayor parte de la dispersión viene de la llama: ajústela con un medidor, no a ojo.</translation>
    </message>
    <message>
        <source>What makes most of the spread is where the drop lands: use a guide.</source>
        <comment>most_aim</comment>
        <translation>La mayor parte de la dispersión viene de dónde cae la gota: use una guía.</translation>
    </message>
    <message>
        <source>What makes most of the spread is the thickness: measure it.</source>
        <comment>most_thick</comment>
        <translation>La mayor parte de la dispersión viene del espesor: mídalo.</translation>
    </message>
    <message>
        <source>What makes most of the spread is the oven's thermometer: have it checked.</source>
        <comment>most_error</comment>
        <translation>La mayor parte de la dispersión viene del termómetro del horno: hágalo revisar.</translation>
    </message>
    <message>
        <source>What makes most of the spread is air and draught: keep them alike.</source>
        <comment>most_air</comment>
        <translation>La mayor parte de la dispersión viene del aire y la corriente: manténgalos iguales.</translation>
    </message>
    <message>
        <source>What makes most of the spread is the heat at the start of the jets.</source>
        <comment>most_start</comment>
        <translation>La mayor parte de la dispersión viene de la temperatura al inicio de los chorros.</translation>
    </message>
    <message>
        <source>What makes most of the spread is the jets: match them to a real plate first.</source>
        <comment>most_jets</comment>
        <translation>La mayor parte de la dispersión viene de los chorros: ajústelos antes con una placa real.</translation>
    </message>
    <message>
        <source>What makes most of the spread is the reading: read it again.</source>
        <comment>most_reading</comment>
        <translation>La mayor parte de la dispersión viene de la lectura: lea otra vez.</translation>
    </message>
    <message>
        <source>What makes most of the spread is the step from the middle to the surface: read the skin as well.</source>
        <comment>most_ratio</comment>
        <translation>La mayor parte de la dispersión viene del paso del centro a la superficie: lea también la piel.</translation>
    </message>
    <message>
        <source>What makes most of the spread is the foot: sort the flasks by it.</source>
        <comment>most_base</comment>
        <translation>La mayor parte de la dispersión viene del fondo: clasifique los matraces por él.</translation>
    </message>
    <message>
        <source>A map is one run a point, with no spread; a border is no finer than its points.</source>
        <comment>limit_map</comment>
        <translation>Un mapa es una pasada por punto, sin dispersión; una frontera no es más fina que sus puntos.</translation>
    </message>
</context>
<context>
    <name>bench.flame</name>
    <message>
        <source>How long must my bottle stay in the flame, so that it cracks when the drop lands?</source>
        <comment>help</comment>
        <translation>¿Cuánto tiempo debe estar mi botella en la llama para que se agriete al caer la gota?</translation>
    </message>
    <message>
        <source>Glass</source>
        <comment>setting.glass</comment>
        <translation>Vidrio</translation>
    </message>
    <message>
        <source>What the bottle is made of.</source>
        <comment>setting.glass.help</comment>
        <translation>De qué está hecha la botella.</translation>
    </message>
    <message>
        <source>Borosilicate</source>
        <comment>choice.glass.borosilicate</comment>
        <translation>Borosilicato</translation>
    </message>
    <message>
        <source>Fused silica</source>
        <comment>choice.glass.fused-silica</comment>
        <translation>Sílice fundida</translation>
    </message>
    <message>
        <source>Lead crystal</source>
        <comment>choice.glass.lead-crystal</comment>
        <translation>Cristal de plomo</translation>
    </message>
    <message>
        <source>Soda lime</source>
        <comment>choice.glass.soda-lime</comment>
        <translation>Sodocálcico</translation>
    </message>
    <message>
        <source>Diameter</source>
        <comment>setting.outer_diameter_mm</comment>
        <translation>Diámetro</translation>
    </message>
    <message>
        <source>Outer diameter of the bottle's body.</source>
        <comment>setting.outer_diameter_mm.help</comment>
        <translation>Diámetro exterior del cuerpo de la botella.</translation>
    </message>
    <message>
        <source>Wall</source>
        <comment>setting.wall_mm</comment>
        <translation>Pared</translation>
    </message>
    <message>
        <source>Thickness of the wall.</source>
        <comment>setting.wall_mm.help</comment>
        <translation>Espesor de la pared.</translation>
    </message>
    <message>
        <source>Flame width</source>
        <comment>setting.ring_width_mm</comment>
        <translation>Anchura de la llama</translation>
    </message>
    <message>
        <source>Width of the flame at half its heat.</source>
        <comment>setting.ring_width_mm.help</comment>
        <translation>Anchura de la llama a la mitad de su calor.</translation>
    </message>
    <message>
        <source>Flame</source>
        <comment>setting.flame_kW_m2</comment>
        <translation>Llama</translation>
    </message>
    <message>
        <source>Heat into the ring, averaged over the turn.</source>
        <comment>setting.flame_kW_m2.help</comment>
        <translation>Calor al anillo, promediado en el giro.</translation>
    </message>
    <message>
        <source>Score</source>
        <comment>setting.score_depth_um</comment>
        <translation>Incisión</translation>
    </message>
    <message>
        <source>Depth of the scored line; 0: none.</source>
        <comment>setting.score_depth_um.help</comment>
        <translation>Profundidad de la línea marcada; 0: ninguna.</translation>
    </message>
    <message>
        <source>Drop after</source>
        <comment>setting.delay_s</comment>
        <translation>Gota tras</translation>
    </message>
    <message>
        <source>From the flame's end to the drop.</source>
        <comment>setting.delay_s.help</comment>
        <translation>Del fin de la llama a la gota.</translation>
    </message>
    <message>
        <source>Longest</source>
        <comment>setting.longest_s</comment>
        <translation>Más largo</translation>
    </message>
    <message>
        <source>Longest heating to look at.</source>
        <comment>setting.longest_s.help</comment>
        <translation>Calentamiento más largo que se mira.</translation>
    </message>
    <message>
        <source>Wanted</source>
        <comment>setting.want_pct</comment>
        <translation>Deseado</translation>
    </message>
    <message>
        <source>Odds of success that are asked for.</source>
        <comment>setting.want_pct.help</comment>
        <translation>Probabilidad de éxito que se pide.</translation>
    </message>
    <message>
        <source>Wall within</source>
        <comment>setting.wall_tol_pct</comment>
        <translation>Pared ±</translation>
    </message>
    <message>
        <source>From bottle to bottle, to both sides.</source>
        <comment>setting.wall_tol_pct.help</comment>
        <translation>De botella a botella, hacia ambos lados.</translation>
    </message>
    <message>
        <source>Flame within</source>
        <comment>setting.flame_tol_pct</comment>
        <translation>Llama ±</translation>
    </message>
    <message>
        <source>From time to time, to both sides.</source>
        <comment>setting.flame_tol_pct.help</comment>
        <translation>De una vez a otra, hacia ambos lados.</translation>
    </message>
    <message>
        <source>Drop within</source>
        <comment>setting.aim_mm</comment>
        <translation>Gota ±</translation>
    </message>
    <message>
        <source>How far the drop may miss the ring's middle.</source>
        <comment>setting.aim_mm.help</comment>
        <translation>Cuánto puede desviarse la gota del centro del anillo.</translation>
    </message>
    <message>
        <source>Runs</source>
        <comment>setting.runs</comment>
        <translation>Pasadas</translation>
    </message>
    <message>
        <source>More take longer and say it more finely.</source>
        <comment>setting.runs.help</comment>
        <translation>Más tardan más y lo dicen con más detalle.</translation>
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
        <translation>Semilla</translation>
    </message>
    <message>
        <source>The same seed draws the same chances again.</source>
        <comment>setting.seed.help</comment>
        <translation>La misma semilla repite el mismo azar.</translation>
    </message>
    <message>
        <source>Window opens</source>
        <comment>opens</comment>
        <translation>Se abre la ventana</translation>
    </message>
    <message>
        <source>Window closes</source>
        <comment>closes</comment>
        <translation>Se cierra la ventana</translation>
    </message>
    <message>
        <source>Best time in the flame</source>
        <comment>best_s</comment>
        <translation>Mejor tiempo en la llama</translation>
    </message>
    <message>
        <source>Cracks when the drop lands</source>
        <comment>best_odds</comment>
        <translation>Se agrieta al caer la gota</translation>
    </message>
    <message>
        <source>Cracks by itself or sags</source>
        <comment>best_alone</comment>
        <translation>Se agrieta sola o se hunde</translation>
    </message>
    <message>
        <source>Does not crack</source>
        <comment>best_none</comment>
        <translation>No se agrieta</translation>
    </message>
    <message>
        <source>Leave the bottle in the flame for {opens:.0f} to {closes:.0f} s: then the crack comes when the drop lands in {want:.0f} of 100 tries or more.</source>
        <comment>window</comment>
        <translation>Deje la botella en la llama de {opens:.0f} a {closes:.0f} s: la grieta llega al caer la gota en {want:.0f} de 100 intentos o más.</translation>
    </message>
    <message>
        <source>Between {opens:.0f} and {closes:.0f} s that holds for nineteen of twenty bottles, however they fall within the tolerances.</source>
        <comment>surest</comment>
        <translation>Entre {opens:.0f} y {closes:.0f} s vale para diecinueve de veinte botellas, caigan donde caigan dentro de las tolerancias.</translation>
    </message>
    <message>
        <source>No single time suits all bottles within the tolerances: measure walls and flame better, or try one first.</source>
        <comment>no_surest</comment>
        <translation>Ningún tiempo vale para todas las botellas dentro de las tolerancias: mida mejor paredes y llama, o pruebe antes con una.</translation>
    </message>
    <message>
        <source>No time in the flame gives {want:.0f} %: at best {odds:.0f} %, after {best:.0f} s. A deeper score, another flame or a quicker drop may help.</source>
        <comment>no_window</comment>
        <translation>Ningún tiempo en la llama da el {want:.0f} %: como mucho {odds:.0f} %, a los {best:.0f} s. Una incisión más honda, otra llama o una gota más rápida pueden ayudar.</translation>
    </message>
    <message>
        <source>It would stay good for longer than the {longest:.0f} s that were looked at.</source>
        <comment>open_end</comment>
        <translation>Seguiría valiendo más allá de los {longest:.0f} s que se miraron.</translation>
    </message>
    <message>
        <source>Shorter, and the drop finds the ring too cool: nothing happens. Longer, and heat alone cracks it, before the drop.</source>
        <comment>wait_cold</comment>
        <translation>Menos, y la gota halla el anillo demasiado frío: no pasa nada. Más, y el calor solo la agrieta, antes de la gota.</translation>
    </message>
    <message>
        <source>What happens, by time in the flame</source>
        <comment>fates</comment>
        <translation>Qué pasa, según el tiempo en la llama</translation>
    </message>
    <message>
        <source>time in the flame</source>
        <comment>seconds</comment>
        <translation>tiempo en la llama</translation>
    </message>
    <message>
        <source>odds</source>
        <comment>odds</comment>
        <translation>probabilidad</translation>
    </message>
    <message>
        <source>cracks at the drop</source>
        <comment>drop</comment>
        <translation>se agrieta con la gota</translation>
    </message>
    <message>
        <source>by itself, or sags</source>
        <comment>alone</comment>
        <translation>sola, o se hunde</translation>
    </message>
    <message>
        <source>does not crack</source>
        <comment>none</comment>
        <translation>no se agrieta</translation>
    </message>
    <message>
        <source>wanted</source>
        <comment>want</comment>
        <translation>deseado</translation>
    </message>
    <message>
        <source>The flame is a ring that burns evenly around a turning bottle, and the drop a full ring of water. A bottle that does not turn is another case.</source>
        <comment>limit_ring</comment>
        <translation>La llama es un anillo que arde por igual alrededor de una botella que gira, y la gota, un anillo completo de agua. Una botella que no gira es otro caso.</translation>
    </message>
    <message>
        <source>Each bottle is heated once; what the drop does is run at a few heating times and interpolated between them.</source>
        <comment>limit_followed</comment>
        <translation>Cada botella se calienta una vez; el efecto de la gota se calcula para unos pocos tiempos y se interpola entre ellos.</translation>
    </message>
    <message>
        <source>The score's depth scatters by a factor of 1.3 about what is stated (hand scoring, assumed), and old scratches elsewhere are those of ordinary handled ware.</source>
        <comment>limit_score</comment>
        <translation>La profundidad de la incisión varía en un factor 1,3 respecto a lo indicado (hecha a mano, supuesto); los demás arañazos son los de piezas usadas corrientes.</translation>
    </message>
    <message>
        <source>Sagging is taken to begin where the ring's outside reaches the softening point.</source>
        <comment>limit_sag</comment>
        <translation>Se supone que el hundimiento empieza donde el exterior llega al punto de reblandecimiento.</translation>
    </message>
</context>
<context>
    <name>bench.oven</name>
    <message>
        <source>Which oven programme is the shortest for my piece, and what does an opened door do?</source>
        <comment>help</comment>
        <translation>¿Qué programa de horno es el más corto para mi pieza, y qué hace una puerta abierta?</translation>
    </message>
    <message>
        <source>Glass</source>
        <comment>setting.glass</comment>
        <translation>Vidrio</translation>
    </message>
    <message>
        <source>What it is made of.</source>
        <comment>setting.glass.help</comment>
        <translation>De qué está hecho.</translation>
    </message>
    <message>
        <source>Borosilicate</source>
        <comment>choice.glass.borosilicate</comment>
        <translation>Borosilicato</translation>
    </message>
    <message>
        <source>Fused silica</source>
        <comment>choice.glass.fused-silica</comment>
        <translation>Sílice fundida</translation>
    </message>
    <message>
        <source>Lead crystal</source>
        <comment>choice.glass.lead-crystal</comment>
        <translation>Cristal de plomo</translation>
    </message>
    <message>
        <source>Soda lime</source>
        <comment>choice.glass.soda-lime</comment>
        <translation>Sodocálcico</translation>
    </message>
    <message>
        <source>Thickest</source>
        <comment>setting.thickness_mm</comment>
        <translation>Más grueso</translation>
    </message>
    <message>
        <source>The thickest section of the piece.</source>
        <comment>setting.thickness_mm.help</comment>
        <translation>La sección más gruesa de la pieza.</translation>
    </message>
    <message>
        <source>Heat leaves by</source>
        <comment>setting.faces</comment>
        <translation>El calor sale por</translation>
    </message>
    <message>
        <source>Both faces, or one alone: a hollow piece, or one that stands on its shelf.</source>
        <comment>setting.faces.help</comment>
        <translation>Ambas caras, o una sola: una pieza hueca, o una apoyada en su estante.</translation>
    </message>
    <message>
        <source>Both</source>
        <comment>choice.faces.both</comment>
        <translation>Ambas</translation>
    </message>
    <message>
        <source>One</source>
        <comment>choice.faces.one</comment>
        <translation>Una</translation>
    </message>
    <message>
        <source>Good enough for</source>
        <comment>setting.limit</comment>
        <translation>Suficiente para</translation>
    </message>
    <message>
        <source>optics: 10 nm/cm; magnifier: 20 nm/cm; ware: temper number 4, bottles.</source>
        <comment>setting.limit.help</comment>
        <translation>óptica: 10 nm/cm; lupa: 20 nm/cm; menaje: grado de recocido 4, botellas.</translation>
    </message>
    <message>
        <source>Optics</source>
        <comment>choice.limit.optics</comment>
        <translation>Óptica</translation>
    </message>
    <message>
        <source>Magnifier</source>
        <comment>choice.limit.magnifier</comment>
        <translation>Lupa</translation>
    </message>
    <message>
        <source>Ware</source>
        <comment>choice.limit.ware</comment>
        <translation>Menaje</translation>
    </message>
    <message>
        <source>Comes in cold</source>
        <comment>setting.comes_cold</comment>
        <translation>Entra fría</translation>
    </message>
    <message>
        <source>Whether the piece must first be heated up with the oven.</source>
        <comment>setting.comes_cold.help</comment>
        <translation>Si la pieza debe calentarse antes con el horno.</translation>
    </message>
    <message>
        <source>Door is opened</source>
        <comment>setting.door</comment>
        <translation>Se abre la puerta</translation>
    </message>
    <message>
        <source>Whether somebody opens it on the way.</source>
        <comment>setting.door.help</comment>
        <translation>Si alguien la abre durante el programa.</translation>
    </message>
    <message>
        <source>Door opens at</source>
        <comment>setting.door_at_min</comment>
        <translation>La puerta se abre a</translation>
    </message>
    <message>
        <source>Minutes after the hold begins.</source>
        <comment>setting.door_at_min.help</comment>
        <translation>Minutos tras empezar el mantenimiento.</translation>
    </message>
    <message>
        <source>Door open for</source>
        <comment>setting.door_for_min</comment>
        <translation>Puerta abierta</translation>
    </message>
    <message>
        <source>How long air and walls stay cooler.</source>
        <comment>setting.door_for_min.help</comment>
        <translation>Cuánto siguen más fríos aire y paredes.</translation>
    </message>
    <message>
        <source>Falls to</source>
        <comment>setting.door_C</comment>
        <translation>Baja a</translation>
    </message>
    <message>
        <source>What air and walls fall to meanwhile.</source>
        <comment>setting.door_C.help</comment>
        <translation>A qué bajan aire y paredes mientras tanto.</translation>
    </message>
    <message>
        <source>Thickness within</source>
        <comment>setting.thickness_tol_pct</comment>
        <translation>Espesor ±</translation>
    </message>
    <message>
        <source>To both sides.</source>
        <comment>setting.thickness_tol_pct.help</comment>
        <translation>Hacia ambos lados.</translation>
    </message>
    <message>
        <source>Oven within</source>
        <comment>setting.oven_tol_C</comment>
        <translation>Horno ±</translation>
    </message>
    <message>
        <source>Error of the oven's thermometer, to both sides.</source>
        <comment>setting.oven_tol_C.help</comment>
        <translation>Error del termómetro del horno, hacia ambos lados.</translation>
    </message>
    <message>
        <source>Air within</source>
        <comment>setting.air_tol_pct</comment>
        <translation>Aire ±</translation>
    </message>
    <message>
        <source>How well its fan stirs, to both sides.</source>
        <comment>setting.air_tol_pct.help</comment>
        <translation>Lo bien que remueve su ventilador, hacia ambos lados.</translation>
    </message>
    <message>
        <source>Runs</source>
        <comment>setting.runs</comment>
        <translation>Pasadas</translation>
    </message>
    <message>
        <source>More take longer and say it more finely.</source>
        <comment>setting.runs.help</comment>
        <translation>Más tardan más y lo dicen con más detalle.</translation>
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
        <translation>Semilla</translation>
    </message>
    <message>
        <source>The same seed draws the same chances again.</source>
        <comment>setting.seed.help</comment>
        <translation>La misma semilla repite el mismo azar.</translation>
    </message>
    <message>
        <source>Until it is cold</source>
        <comment>hours</comment>
        <translation>Hasta que esté fría</translation>
    </message>
    <message>
        <source>Left in the piece</source>
        <comment>birefringence</comment>
        <translation>Queda en la pieza</translation>
    </message>
    <message>
        <source>Temper number</source>
        <comment>temper</comment>
        <translation>Grado de recocido</translation>
    </message>
    <message>
        <source>Good enough</source>
        <comment>passes</comment>
        <translation>Suficiente</translation>
    </message>
    <message>
        <source>Largest pull on the way</source>
        <comment>pull</comment>
        <translation>Mayor tracción en el proceso</translation>
    </message>
    <message>
        <source>Cracks on the way</source>
        <comment>cracks</comment>
        <translation>Se agrieta en el proceso</translation>
    </message>
    <message>
        <source>Left, door opened</source>
        <comment>door_birefringence</comment>
        <translation>Queda, con puerta abierta</translation>
    </message>
    <message>
        <source>Good enough, door opened</source>
        <comment>door_passes</comment>
        <translation>Suficiente, con puerta abierta</translation>
    </message>
    <message>
        <source>Largest pull, door opened</source>
        <comment>door_pull</comment>
        <translation>Mayor tracción, con puerta abierta</translation>
    </message>
    <message>
        <source>Cracks, door opened</source>
        <comment>door_cracks</comment>
        <translation>Se agrieta, con puerta abierta</translation>
    </message>
    <message>
        <source>Hold at {hold:.0f} °C for {minutes:.0f} minutes, cool at {slow:.3g} °C/h down to {slow_to:.0f} °C, then at {fast:.3g} °C/h: {hours:.1f} hours in all.</source>
        <comment>programme</comment>
        <translation>Mantener a {hold:.0f} °C {minutes:.0f} minutos, enfriar a {slow:.3g} °C/h hasta {slow_to:.0f} °C y luego a {fast:.3g} °C/h: {hours:.1f} horas en total.</translation>
    </message>
    <message>
        <source>Nine of ten such pieces keep at most {high:.3g} nm on each centimetre; {limit:.3g} are allowed.</source>
        <comment>passes_well</comment>
        <translation>Nueve de cada diez piezas conservan como mucho {high:.3g} nm por centímetro; se admiten {limit:.3g}.</translation>
    </message>
    <message>
        <source>Within the tolerances it may keep up to {high:.3g} nm on each centimetre, and {limit:.3g} are allowed: {odds:.0f} % pass. A wider tolerance of the thickness makes the programme slower.</source>
        <comment>passes_badly</comment>
        <translation>Dentro de las tolerancias puede conservar hasta {high:.3g} nm por centímetro, y se admiten {limit:.3g}: pasa el {odds:.0f} %. Una tolerancia de espesor más amplia hace el programa más lento.</translation>
    </message>
    <message>
        <source>The opened door leaves little behind: at most {high:.3g} nm on each centimetre stay.</source>
        <comment>door_harmless</comment>
        <translation>La puerta abierta deja poco: quedan como mucho {high:.3g} nm por centímetro.</translation>
    </message>
    <message>
        <source>The opened door spoils it: {middle:.3g} nm on each centimetre stay in place of {calm:.3g}, and only {odds:.0f} % pass. Anneal the piece again.</source>
        <comment>door_spoils</comment>
        <translation>La puerta abierta la estropea: quedan {middle:.3g} nm por centímetro en vez de {calm:.3g}, y solo pasa el {odds:.0f} %. Recueza la pieza otra vez.</translation>
    </message>
    <message>
        <source>For a time its chill pulls the skin with up to {pull:.0f} MPa, more than the {trusted:.0f} MPa that annealed glass is customarily trusted with: a bruised piece may crack.</source>
        <comment>door_pulls</comment>
        <translation>Durante un rato su frío tira de la piel con hasta {pull:.0f} MPa, más que los {trusted:.0f} MPa que se suelen confiar al vidrio recocido: una pieza dañada puede agrietarse.</translation>
    </message>
    <message>
        <source>The chill pulls the skin with up to {pull:.0f} MPa: {odds:.0f} in 100 handled pieces crack at the door.</source>
        <comment>door_cracks_it</comment>
        <translation>El frío tira de la piel con hasta {pull:.0f} MPa: {odds:.0f} de 100 piezas usadas se agrietan con la puerta.</translation>
    </message>
    <message>
        <source>For the oven's controller</source>
        <comment>segments</comment>
        <translation>Para el regulador del horno</translation>
    </message>
    <message>
        <source>segment</source>
        <comment>segment</comment>
        <translation>tramo</translation>
    </message>
    <message>
        <source>heat up</source>
        <comment>up</comment>
        <translation>calentar</translation>
    </message>
    <message>
        <source>hold</source>
        <comment>hold</comment>
        <translation>mantener</translation>
    </message>
    <message>
        <source>cool slowly</source>
        <comment>slow</comment>
        <translation>enfriar despacio</translation>
    </message>
    <message>
        <source>cool faster</source>
        <comment>fast</comment>
        <translation>enfriar más rápido</translation>
    </message>
    <message>
        <source>rate</source>
        <comment>rate</comment>
        <translation>ritmo</translation>
    </message>
    <message>
        <source>to</source>
        <comment>to</comment>
        <translation>a</translation>
    </message>
    <message>
        <source>hold for</source>
        <comment>for</comment>
        <translation>mantener</translation>
    </message>
    <message>
        <source>ends at h:min</source>
        <comment>ends</comment>
        <translation>acaba a h:min</translation>
    </message>
    <message>
        <source>temperature</source>
        <comment>temperature</comment>
        <translation>temperatura</translation>
    </message>
    <message>
        <source>time</source>
        <comment>time</comment>
        <translation>tiempo</translation>
    </message>
    <message>
        <source>oven</source>
        <comment>oven</comment>
        <translation>horno</translation>
    </message>
    <message>
        <source>middle of the glass, door opened</source>
        <comment>inside</comment>
        <translation>centro del vidrio, puerta abierta</translation>
    </message>
    <message>
        <source>its surface, door opened</source>
        <comment>outside</comment>
        <translation>su superficie, puerta abierta</translation>
    </message>
    <message>
        <source>strain point</source>
        <comment>strain</comment>
        <translation>punto de deformación</translation>
    </message>
    <message>
        <source>The programme is laid out for the thickest piece within the tolerance.</source>
        <comment>limit_design</comment>
        <translation>El programa está pensado para la pieza más gruesa dentro de la tolerancia.</translation>
    </message>
    <message>
        <source>The thickest section is taken as a wide plate of even thickness. Feet, rims and joints of thick and thin keep more: leave a margin, and look at the piece.</source>
        <comment>limit_plate</comment>
        <translation>La sección más gruesa se toma como placa ancha de espesor igual. Pies, bordes y uniones de grueso y fino conservan más: deje un margen y mire la pieza.</translation>
    </message>
    <message>
        <source>A section that loses heat by one face alone counts as a plate twice as thick.</source>
        <comment>limit_one</comment>
        <translation>Una sección que pierde calor por una sola cara cuenta como una placa el doble de gruesa.</translation>
    </message>
    <message>
        <source>Times count from the beginning of the hold, and a piece that comes in cold is taken as hot and even by then: its heating up is not run.</source>
        <comment>limit_cold</comment>
        <translation>Los tiempos cuentan desde el inicio del mantenimiento; una pieza que entra fría se toma ya caliente y uniforme: su calentamiento no se calcula.</translation>
    </message>
    <message>
        <source>While the door is open, air and walls are taken as cool as stated, and as told once it is shut; a heavy oven's walls stay hotter than that.</source>
        <comment>limit_door</comment>
        <translation>Con la puerta abierta, aire y paredes se toman tan fríos como se indica, y según programa al cerrarla; las paredes de un horno pesado quedan más calientes.</translation>
    </message>
    <message>
        <source>The limit is that of stress that stays; colour, bubbles and stones are another matter. A glass of unknown make needs its own annealing point.</source>
        <comment>limit_rest</comment>
        <translation>El límite es el de la tensión que queda; color, burbujas y piedras son otra cosa. Un vidrio de origen desconocido necesita su propio punto de recocido.</translation>
    </message>
</context>
<context>
    <name>bench.toughness</name>
    <message>
        <source>How tough is my sample, which grade is it, and how will it break?</source>
        <comment>help</comment>
        <translation>¿Qué resistencia tiene mi muestra, de qué clase es y cómo se romperá?</translation>
    </message>
    <message>
        <source>What is known</source>
        <comment>setting.known</comment>
        <translation>Qué se conoce</translation>
    </message>
    <message>
        <source>Its cooling; or a reading through its edge; or one of a surface instrument.</source>
        <comment>setting.known.help</comment>
        <translation>Su enfriamiento; o una lectura por su canto; o la de un aparato de superficie.</translation>
    </message>
    <message>
        <source>Cooling</source>
        <comment>choice.known.cooling</comment>
        <translation>Enfriado</translation>
    </message>
    <message>
        <source>Edge</source>
        <comment>choice.known.edge</comment>
        <translation>Canto</translation>
    </message>
    <message>
        <source>Face</source>
        <comment>choice.known.face</comment>
        <translation>Cara</translation>
    </message>
    <message>
        <source>Glass</source>
        <comment>setting.glass</comment>
        <translation>Vidrio</translation>
    </message>
    <message>
        <source>What it is made of.</source>
        <comment>setting.glass.help</comment>
        <translation>De qué está hecho.</translation>
    </message>
    <message>
        <source>Borosilicate</source>
        <comment>choice.glass.borosilicate</comment>
        <translation>Borosilicato</translation>
    </message>
    <message>
        <source>Fused silica</source>
        <comment>choice.glass.fused-silica</comment>
        <translation>Sílice fundida</translation>
    </message>
    <message>
        <source>Lead crystal</source>
        <comment>choice.glass.lead-crystal</comment>
        <translation>Cristal de plomo</translation>
    </message>
    <message>
        <source>Soda lime</source>
        <comment>choice.glass.soda-lime</comment>
        <translation>Sodocálcico</translation>
    </message>
    <message>
        <source>Thickness</source>
        <comment>setting.thickness_mm</comment>
        <translation>Espesor</translation>
    </message>
    <message>
        <source>Of the plate.</source>
        <comment>setting.thickness_mm.help</comment>
        <translation>De la placa.</translation>
    </message>
    <message>
        <source>Start</source>
        <comment>setting.start_C</comment>
        <translation>Inicio</translation>
    </message>
    <message>
        <source>Heat when the jets start (cooling).</source>
        <comment>setting.start_C.help</comment>
        <translation>Temperatura al empezar los chorros (enfriado).</translation>
    </message>
    <message>
        <source>Jets</source>
        <comment>setting.jet_W_m2K</comment>
        <translation>Chorros</translation>
    </message>
    <message>
        <source>15: hardly more than still air (cooling).</source>
        <comment>setting.jet_W_m2K.help</comment>
        <translation>15: apenas más que aire en calma (enfriado).</translation>
    </message>
    <message>
        <source>Read at</source>
        <comment>setting.edge_at</comment>
        <translation>Leído en</translation>
    </message>
    <message>
        <source>Where in the thickness (edge).</source>
        <comment>setting.edge_at.help</comment>
        <translation>En qué punto del espesor (canto).</translation>
    </message>
    <message>
        <source>Middle</source>
        <comment>choice.edge_at.middle</comment>
        <translation>Centro</translation>
    </message>
    <message>
        <source>Skin</source>
        <comment>choice.edge_at.skin</comment>
        <translation>Piel</translation>
    </message>
    <message>
        <source>Retardation</source>
        <comment>setting.edge_nm</comment>
        <translation>Retardo</translation>
    </message>
    <message>
        <source>Read through the edge (edge).</source>
        <comment>setting.edge_nm.help</comment>
        <translation>Leído a través del canto (canto).</translation>
    </message>
    <message>
        <source>Path</source>
        <comment>setting.path_mm</comment>
        <translation>Camino</translation>
    </message>
    <message>
        <source>Way of the light through the glass (edge).</source>
        <comment>setting.path_mm.help</comment>
        <translation>Camino de la luz en el vidrio (canto).</translation>
    </message>
    <message>
        <source>Surface reading</source>
        <comment>setting.face_MPa</comment>
        <translation>Lectura de superficie</translation>
    </message>
    <message>
        <source>Squeeze, by a surface instrument (face).</source>
        <comment>setting.face_MPa.help</comment>
        <translation>Compresión, con un aparato de superficie (cara).</translation>
    </message>
    <message>
        <source>Thickness within</source>
        <comment>setting.thickness_tol_pct</comment>
        <translation>Espesor ±</translation>
    </message>
    <message>
        <source>To both sides.</source>
        <comment>setting.thickness_tol_pct.help</comment>
        <translation>Hacia ambos lados.</translation>
    </message>
    <message>
        <source>Start within</source>
        <comment>setting.start_tol_C</comment>
        <translation>Inicio ±</translation>
    </message>
    <message>
        <source>To both sides (cooling).</source>
        <comment>setting.start_tol_C.help</comment>
        <translation>Hacia ambos lados (enfriado).</translation>
    </message>
    <message>
        <source>Jets within</source>
        <comment>setting.jet_tol_pct</comment>
        <translation>Chorros ±</translation>
    </message>
    <message>
        <source>To both sides (cooling).</source>
        <comment>setting.jet_tol_pct.help</comment>
        <translation>Hacia ambos lados (enfriado).</translation>
    </message>
    <message>
        <source>Reading within</source>
        <comment>setting.reading_tol_pct</comment>
        <translation>Lectura ±</translation>
    </message>
    <message>
        <source>To both sides (edge, face).</source>
        <comment>setting.reading_tol_pct.help</comment>
        <translation>Hacia ambos lados (canto, cara).</translation>
    </message>
    <message>
        <source>Runs</source>
        <comment>setting.runs</comment>
        <translation>Pasadas</translation>
    </message>
    <message>
        <source>More take longer and say it more finely.</source>
        <comment>setting.runs.help</comment>
        <translation>Más tardan más y lo dicen con más detalle.</translation>
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
        <translation>Semilla</translation>
    </message>
    <message>
        <source>The same seed draws the same chances again.</source>
        <comment>setting.seed.help</comment>
        <translation>La misma semilla repite el mismo azar.</translation>
    </message>
    <message>
        <source>Squeeze at the surface</source>
        <comment>surface</comment>
        <translation>Compresión en la superficie</translation>
    </message>
    <message>
        <source>Pull in the middle</source>
        <comment>middle</comment>
        <translation>Tracción en el centro</translation>
    </message>
    <message>
        <source>Particles in 50 mm by 50 mm</source>
        <comment>particles</comment>
        <translation>Partículas en 50 mm por 50 mm</translation>
    </message>
    <message>
        <source>Times as strong, used</source>
        <comment>ratio</comment>
        <translation>Veces más resistente, usada</translation>
    </message>
    <message>
        <source>Bending strength, new</source>
        <comment>strength</comment>
        <translation>Resistencia a flexión, nueva</translation>
    </message>
    <message>
        <source>Blow that breaks half of them</source>
        <comment>blow</comment>
        <translation>Golpe que rompe la mitad</translation>
    </message>
    <message>
        <source>A crack runs by itself</source>
        <comment>runs_by_itself</comment>
        <translation>Una grieta corre sola</translation>
    </message>
    <message>
        <source>Grade: annealed</source>
        <comment>is_annealed</comment>
        <translation>Clase: recocido</translation>
    </message>
    <message>
        <source>Grade: heat-strengthened</source>
        <comment>is_heat-strengthened</comment>
        <translation>Clase: termoendurecido</translation>
    </message>
    <message>
        <source>Grade: toughened</source>
        <comment>is_toughened</comment>
        <translation>Clase: templado</translation>
    </message>
    <message>
        <source>Within what is known, it is {grade}: {odds:.0f} of 100 such plates are.</source>
        <comment>sure</comment>
        <translation>Con lo que se sabe, es {grade}: lo son {odds:.0f} de 100 placas así.</translation>
    </message>
    <message>
        <source>It may be {grade} ({odds:.0f} of 100 such plates) or {other} ({rest:.0f}): measure again, or treat it as whichever breaks worse.</source>
        <comment>unsure</comment>
        <translation>Puede ser {grade} ({odds:.0f} de 100 placas así) o {other} ({rest:.0f}): mida otra vez, o trátela como la que rompa peor.</translation>
    </message>
    <message>
        <source>When it breaks, all of it goes at once, into some {low:.0f} to {high:.0f} particles in 50 mm by 50 mm.</source>
        <comment>dice</comment>
        <translation>Cuando se rompe, va toda de golpe, en unas {low:.0f} a {high:.0f} partículas en 50 mm por 50 mm.</translation>
    </message>
    <message>
        <source>When it breaks, cracks run by themselves, but into pieces larger than the standard asks of toughened glass: {asked:.0f} in 50 mm by 50 mm.</source>
        <comment>coarse</comment>
        <translation>Cuando se rompe, las grietas corren solas, pero en trozos mayores de lo que la norma pide al vidrio templado: {asked:.0f} en 50 mm por 50 mm.</translation>
    </message>
    <message>
        <source>When it breaks, it parts into long sharp shards like plain glass: it holds too little energy for dice.</source>
        <comment>shards</comment>
        <translation>Cuando se rompe, da fragmentos largos y afilados como el vidrio corriente: guarda poca energía para hacerse dados.</translation>
    </message>
    <message>
        <source>Under a load that stays, used, it bears {low:.1f} to {high:.1f} times as much as a plain plate.</source>
        <comment>load</comment>
        <translation>Bajo una carga que dura, usada, soporta de {low:.1f} a {high:.1f} veces lo que una placa corriente.</translation>
    </message>
    <message>
        <source>Grades</source>
        <comment>grades</comment>
        <translation>Clases</translation>
    </message>
    <message>
        <source>grade</source>
        <comment>grade</comment>
        <translation>clase</translation>
    </message>
    <message>
        <source>odds</source>
        <comment>odds</comment>
        <translation>probabilidad</translation>
    </message>
    <message>
        <source>least squeeze</source>
        <comment>asked</comment>
        <translation>compresión mínima</translation>
    </message>
    <message>
        <source>annealed</source>
        <comment>annealed</comment>
        <translation>recocido</translation>
    </message>
    <message>
        <source>heat-strengthened</source>
        <comment>heat-strengthened</comment>
        <translation>termoendurecido</translation>
    </message>
    <message>
        <source>toughened</source>
        <comment>toughened</comment>
        <translation>templado</translation>
    </message>
    <message>
        <source>depth below the surface</source>
        <comment>depth</comment>
        <translation>profundidad bajo la superficie</translation>
    </message>
    <message>
        <source>stress</source>
        <comment>stress</comment>
        <translation>tensión</translation>
    </message>
    <message>
        <source>most likely</source>
        <comment>through</comment>
        <translation>lo más probable</translation>
    </message>
    <message>
        <source>weakest of twenty</source>
        <comment>low</comment>
        <translation>la más débil de veinte</translation>
    </message>
    <message>
        <source>strongest of twenty</source>
        <comment>high</comment>
        <translation>la más fuerte de veinte</translation>
    </message>
    <message>
        <source>By surface compression: heat-strengthened from 24, toughened from 69 MPa (ASTM C1048); by particles: EN 12150-1. A grade is what a factory's tests give, not this.</source>
        <comment>limit_surface</comment>
        <translation>Por compresión superficial: termoendurecido desde 24, templado desde 69 MPa (ASTM C1048); por partículas: EN 12150-1. La clase la dan los ensayos de fábrica, no esto.</translation>
    </message>
    <message>
        <source>The plate is wide, cooled alike on both faces, and has no holes; edges and corners are weaker.</source>
        <comment>limit_even</comment>
        <translation>La placa es ancha, enfriada igual por ambas caras y sin agujeros; cantos y esquinas son más débiles.</translation>
    </message>
    <message>
        <source>Through the edge, the stress in the middle stands for that at the surface by {ratio:.1f} to 1; light that is not parallel to the faces blurs the skin's reading.</source>
        <comment>limit_edge</comment>
        <translation>Por el canto, la tensión del centro se relaciona con la de la superficie como {ratio:.1f} a 1; la luz no paralela a las caras difumina la lectura de la piel.</translation>
    </message>
    <message>
        <source>A surface instrument reads the tin side of float alone (ASTM C1279).</source>
        <comment>limit_face</comment>
        <translation>Un aparato de superficie solo lee el lado del estaño del flotado (ASTM C1279).</translation>
    </message>
    <message>
        <source>Particles follow from the energy inside, by one fraction that was fitted to plates of 6 mm; patterns differ from plate to plate.</source>
        <comment>limit_dice</comment>
        <translation>Las partículas salen de la energía interior, con una fracción ajustada a placas de 6 mm; los dibujos varían de placa a placa.</translation>
    </message>
</context>
<context>
    <name>bench.bubbles</name>
    <message>
        <source>How deep a scratch and how hard a blow do my bubbles need, and how many of ten will behave?</source>
        <comment>help</comment>
        <translation>¿Qué arañazo y qué golpe necesitan mis matraces, y cuántos de diez se portarán bien?</translation>
    </message>
    <message>
        <source>Glass</source>
        <comment>setting.glass</comment>
        <translation>Vidrio</translation>
    </message>
    <message>
        <source>What they are made of.</source>
        <comment>setting.glass.help</comment>
        <translation>De qué están hechos.</translation>
    </message>
    <message>
        <source>Borosilicate</source>
        <comment>choice.glass.borosilicate</comment>
        <translation>Borosilicato</translation>
    </message>
    <message>
        <source>Fused silica</source>
        <comment>choice.glass.fused-silica</comment>
        <translation>Sílice fundida</translation>
    </message>
    <message>
        <source>Lead crystal</source>
        <comment>choice.glass.lead-crystal</comment>
        <translation>Cristal de plomo</translation>
    </message>
    <message>
        <source>Soda lime</source>
        <comment>choice.glass.soda-lime</comment>
        <translation>Sodocálcico</translation>
    </message>
    <message>
        <source>Diameter</source>
        <comment>setting.outer_diameter_mm</comment>
        <translation>Diámetro</translation>
    </message>
    <message>
        <source>Outer diameter of the flask.</source>
        <comment>setting.outer_diameter_mm.help</comment>
        <translation>Diámetro exterior del matraz.</translation>
    </message>
    <message>
        <source>Length</source>
        <comment>setting.length_mm</comment>
        <translation>Longitud</translation>
    </message>
    <message>
        <source>From the foot to the mouth.</source>
        <comment>setting.length_mm.help</comment>
        <translation>Del fondo a la boca.</translation>
    </message>
    <message>
        <source>Foot</source>
        <comment>setting.base_mm</comment>
        <translation>Fondo</translation>
    </message>
    <message>
        <source>Thickness in the middle of the foot.</source>
        <comment>setting.base_mm.help</comment>
        <translation>Espesor en el centro del fondo.</translation>
    </message>
    <message>
        <source>Wall</source>
        <comment>setting.wall_mm</comment>
        <translation>Pared</translation>
    </message>
    <message>
        <source>Thickness of the wall.</source>
        <comment>setting.wall_mm.help</comment>
        <translation>Espesor de la pared.</translation>
    </message>
    <message>
        <source>Cooled</source>
        <comment>setting.way</comment>
        <translation>Enfriado</translation>
    </message>
    <message>
        <source>In the open, or by an oven programme.</source>
        <comment>setting.way.help</comment>
        <translation>Al aire o con un programa de horno.</translation>
    </message>
    <message>
        <source>Air</source>
        <comment>choice.way.air</comment>
        <translation>Aire</translation>
    </message>
    <message>
        <source>Oven</source>
        <comment>choice.way.oven</comment>
        <translation>Horno</translation>
    </message>
    <message>
        <source>Blow</source>
        <comment>setting.blow_J</comment>
        <translation>Golpe</translation>
    </message>
    <message>
        <source>Energy of a soft blow on the foot, from outside.</source>
        <comment>setting.blow_J.help</comment>
        <translation>Energía de un golpe suave en el fondo, desde fuera.</translation>
    </message>
    <message>
        <source>Scratch</source>
        <comment>setting.scratch_um</comment>
        <translation>Arañazo</translation>
    </message>
    <message>
        <source>Depth meant for the scratch inside the foot.</source>
        <comment>setting.scratch_um.help</comment>
        <translation>Profundidad buscada del arañazo dentro del fondo.</translation>
    </message>
    <message>
        <source>Batch</source>
        <comment>setting.batch</comment>
        <translation>Lote</translation>
    </message>
    <message>
        <source>How many are brought on stage.</source>
        <comment>setting.batch.help</comment>
        <translation>Cuántos se llevan al escenario.</translation>
    </message>
    <message>
        <source>Spread is from</source>
        <comment>setting.spread_is</comment>
        <translation>La dispersión es de</translation>
    </message>
    <message>
        <source>Whether each flask differs, or all of one batch are alike.</source>
        <comment>setting.spread_is.help</comment>
        <translation>Si cada matraz difiere, o todos los de un lote son iguales.</translation>
    </message>
    <message>
        <source>Flask to flask</source>
        <comment>choice.spread_is.flask to flask</comment>
        <translation>Matraz a matraz</translation>
    </message>
    <message>
        <source>Batch to batch</source>
        <comment>choice.spread_is.batch to batch</comment>
        <translation>Lote a lote</translation>
    </message>
    <message>
        <source>Foot within</source>
        <comment>setting.base_tol_pct</comment>
        <translation>Fondo ±</translation>
    </message>
    <message>
        <source>To both sides.</source>
        <comment>setting.base_tol_pct.help</comment>
        <translation>Hacia ambos lados.</translation>
    </message>
    <message>
        <source>Wall within</source>
        <comment>setting.wall_tol_pct</comment>
        <translation>Pared ±</translation>
    </message>
    <message>
        <source>To both sides.</source>
        <comment>setting.wall_tol_pct.help</comment>
        <translation>Hacia ambos lados.</translation>
    </message>
    <message>
        <source>Cooling within</source>
        <comment>setting.air_tol_pct</comment>
        <translation>Enfriado ±</translation>
    </message>
    <message>
        <source>Draught and hand, to both sides.</source>
        <comment>setting.air_tol_pct.help</comment>
        <translation>Corriente y mano, hacia ambos lados.</translation>
    </message>
    <message>
        <source>Runs</source>
        <comment>setting.runs</comment>
        <translation>Pasadas</translation>
    </message>
    <message>
        <source>More take longer and say it more finely.</source>
        <comment>setting.runs.help</comment>
        <translation>Más tardan más y lo dicen con más detalle.</translation>
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
        <translation>Semilla</translation>
    </message>
    <message>
        <source>The same seed draws the same chances again.</source>
        <comment>setting.seed.help</comment>
        <translation>La misma semilla repite el mismo azar.</translation>
    </message>
    <message>
        <source>Each behaves</source>
        <comment>behave</comment>
        <translation>Cada uno se porta bien</translation>
    </message>
    <message>
        <source>Behave on stage</source>
        <comment>count</comment>
        <translation>Se portan bien en escena</translation>
    </message>
    <message>
        <source>The blow breaks it already</source>
        <comment>blow_breaks</comment>
        <translation>Ya lo rompe el golpe</translation>
    </message>
    <message>
        <source>The scratch breaks it</source>
        <comment>scratch_breaks</comment>
        <translation>Lo rompe el arañazo</translation>
    </message>
    <message>
        <source>Scratch that bursts nine of ten</source>
        <comment>scratch_needed</comment>
        <translation>Arañazo que revienta nueve de diez</translation>
    </message>
    <message>
        <source>Blow that 19 of 20 bear</source>
        <comment>blow_borne</comment>
        <translation>Golpe que aguantan 19 de 20</translation>
    </message>
    <message>
        <source>Foot, outside</source>
        <comment>base_outside</comment>
        <translation>Fondo, exterior</translation>
    </message>
    <message>
        <source>Foot, inside</source>
        <comment>base_inside</comment>
        <translation>Fondo, interior</translation>
    </message>
    <message>
        <source>Of {batch:.0f} on stage, {low:.0f} to {high:.0f} bear a blow of {blow:.1f} J and then burst at a scratch of {scratch:.0f} µm; {middle:.0f} is the middle.</source>
        <comment>show</comment>
        <translation>De {batch:.0f} en escena, de {low:.0f} a {high:.0f} aguantan un golpe de {blow:.1f} J y luego revientan con un arañazo de {scratch:.0f} µm; lo central es {middle:.0f}.</translation>
    </message>
    <message>
        <source>Of {batch:.0f} on stage, none is likely to bear a blow of {blow:.1f} J and then burst at a scratch of {scratch:.0f} µm.</source>
        <comment>none_behave</comment>
        <translation>De {batch:.0f} en escena, es probable que ninguno aguante un golpe de {blow:.1f} J y luego reviente con un arañazo de {scratch:.0f} µm.</translation>
    </message>
    <message>
        <source>For nine of ten to burst, scratch {scratch:.0f} µm deep; for all but one in twenty to bear the blow, keep it under {blow:.1f} J.</source>
        <comment>need</comment>
        <translation>Para que revienten nueve de diez, arañe {scratch:.0f} µm de hondo; para que todos menos uno de veinte aguanten el golpe, no pase de {blow:.1f} J.</translation>
    </message>
    <message>
        <source>No scratch up to half the foot bursts most of these: their foot is too thin, or they were cooled too slowly, to hold enough pull inside.</source>
        <comment>need_none</comment>
        <translation>Ningún arañazo hasta medio fondo revienta la mayoría: su fondo es muy fino, o se enfriaron muy despacio para guardar bastante tracción dentro.</translation>
    </message>
    <message>
        <source>Cooled in the oven they hold hardly any stress: they are ordinary flasks, and the scratch does nothing. That is what the oven is for.</source>
        <comment>calm</comment>
        <translation>Enfriados en el horno apenas guardan tensión: son matraces corrientes y el arañazo no hace nada. Para eso está el horno.</translation>
    </message>
    <message>
        <source>Bring {spare:.0f} for {batch:.0f} that behave, to be right nineteen times in twenty.</source>
        <comment>spare</comment>
        <translation>Lleve {spare:.0f} para tener {batch:.0f} que se porten bien, y acertar diecinueve de veinte veces.</translation>
    </message>
    <message>
        <source>How many behave</source>
        <comment>counts</comment>
        <translation>Cuántos se portan bien</translation>
    </message>
    <message>
        <source>how many</source>
        <comment>number</comment>
        <translation>cuántos</translation>
    </message>
    <message>
        <source>odds</source>
        <comment>odds</comment>
        <translation>probabilidad</translation>
    </message>
    <message>
        <source>odds of so many</source>
        <comment>flasks</comment>
        <translation>probabilidad de tantos</translation>
    </message>
    <message>
        <source>Every flask leaves the pipe at one temperature, {hot:.0f} °C, round and centred; a seed, a stone or a foot that is out of the middle makes it weaker.</source>
        <comment>limit_maker</comment>
        <translation>Todo matraz sale de la caña a una temperatura, {hot:.0f} °C, redondo y centrado; una burbuja, una piedra o un fondo descentrado lo debilita.</translation>
    </message>
    <message>
        <source>A scratch scatters by a factor of 1.3 about the depth that is meant (assumed), and is as long as it is deep several times over.</source>
        <comment>limit_scratch</comment>
        <translation>Un arañazo varía en un factor 1,3 en torno a la profundidad buscada (supuesto), y es varias veces más largo que hondo.</translation>
    </message>
    <message>
        <source>The blow is soft, in the middle of the foot: a hard, sharp one bruises the glass first. Outside are the flaws of used ware; inside nothing has touched the glass.</source>
        <comment>limit_blow</comment>
        <translation>El golpe es suave, en el centro del fondo: uno duro y agudo daña antes el vidrio. Fuera están los defectos del uso; dentro nada ha tocado el vidrio.</translation>
    </message>
    <message>
        <source>A flask may burst on its own, at any time and in anybody's hand. Count only with the tests that are made behind a screen.</source>
        <comment>limit_wait</comment>
        <translation>Un matraz puede reventar solo, en cualquier momento y en cualquier mano. Cuente solo con las pruebas hechas tras una pantalla.</translation>
    </message>
</context>
<context>
    <name>bench.colour</name>
    <message>
        <source>Which retardation, order and stress does a colour in my polariscope mean?</source>
        <comment>help</comment>
        <translation>¿Qué retardo, orden y tensión significa un color en mi polariscopio?</translation>
    </message>
    <message>
        <source>Read by</source>
        <comment>setting.method</comment>
        <translation>Se lee por</translation>
    </message>
    <message>
        <source>The colour itself, or by turning the analyser until the place is dark.</source>
        <comment>setting.method.help</comment>
        <translation>El propio color, o girando el analizador hasta que el punto oscurece.</translation>
    </message>
    <message>
        <source>Colour</source>
        <comment>choice.method.colour</comment>
        <translation>Color</translation>
    </message>
    <message>
        <source>Turning</source>
        <comment>choice.method.turning</comment>
        <translation>Giro</translation>
    </message>
    <message>
        <source>Lamp</source>
        <comment>setting.lamp</comment>
        <translation>Lámpara</translation>
    </message>
    <message>
        <source>The polariscope's.</source>
        <comment>setting.lamp.help</comment>
        <translation>La del polariscopio.</translation>
    </message>
    <message>
        <source>Daylight</source>
        <comment>choice.lamp.daylight</comment>
        <translation>Luz de día</translation>
    </message>
    <message>
        <source>Incandescent</source>
        <comment>choice.lamp.incandescent</comment>
        <translation>Incandescente</translation>
    </message>
    <message>
        <source>White led</source>
        <comment>choice.lamp.white-led</comment>
        <translation>LED blanca</translation>
    </message>
    <message>
        <source>Sodium</source>
        <comment>choice.lamp.sodium</comment>
        <translation>Sodio</translation>
    </message>
    <message>
        <source>Green</source>
        <comment>choice.lamp.green</comment>
        <translation>Verde</translation>
    </message>
    <message>
        <source>Seen without plate</source>
        <comment>setting.bare</comment>
        <translation>Visto sin lámina</translation>
    </message>
    <message>
        <source>Whether it was looked at plainly (colour).</source>
        <comment>setting.bare.help</comment>
        <translation>Si se miró sin nada (color).</translation>
    </message>
    <message>
        <source>Colour at</source>
        <comment>setting.seen_nm</comment>
        <translation>Color en</translation>
    </message>
    <message>
        <source>Where on the chart, without the plate.</source>
        <comment>setting.seen_nm.help</comment>
        <translation>Dónde en la carta, sin la lámina.</translation>
    </message>
    <message>
        <source>Seen with plate</source>
        <comment>setting.plate</comment>
        <translation>Visto con lámina</translation>
    </message>
    <message>
        <source>Whether the tint plate was tried (colour).</source>
        <comment>setting.plate.help</comment>
        <translation>Si se probó la lámina de onda (color).</translation>
    </message>
    <message>
        <source>Colour with plate at</source>
        <comment>setting.plate_seen_nm</comment>
        <translation>Color con lámina en</translation>
    </message>
    <message>
        <source>Where on the same chart its colour lies with the tint plate in.</source>
        <comment>setting.plate_seen_nm.help</comment>
        <translation>Dónde cae en la misma carta su color con la lámina de onda.</translation>
    </message>
    <message>
        <source>The plate</source>
        <comment>setting.plate_way</comment>
        <translation>La lámina</translation>
    </message>
    <message>
        <source>Turn the piece by a quarter: higher colours where it adds, lower where it takes.</source>
        <comment>setting.plate_way.help</comment>
        <translation>Gire la pieza un cuarto de vuelta: colores más altos donde suma, más bajos donde resta.</translation>
    </message>
    <message>
        <source>Adds</source>
        <comment>choice.plate_way.adds</comment>
        <translation>Suma</translation>
    </message>
    <message>
        <source>Takes away</source>
        <comment>choice.plate_way.takes away</comment>
        <translation>Resta</translation>
    </message>
    <message>
        <source>Unknown</source>
        <comment>choice.plate_way.unknown</comment>
        <translation>Desconocido</translation>
    </message>
    <message>
        <source>Plate</source>
        <comment>setting.plate_nm</comment>
        <translation>Lámina</translation>
    </message>
    <message>
        <source>Retardation of the tint plate.</source>
        <comment>setting.plate_nm.help</comment>
        <translation>Retardo de la lámina de onda.</translation>
    </message>
    <message>
        <source>Match within</source>
        <comment>setting.match</comment>
        <translation>Igualación ±</translation>
    </message>
    <message>
        <source>CIEDE2000: 1 side by side, some 4 against a chart, 8 from memory.</source>
        <comment>setting.match.help</comment>
        <translation>CIEDE2000: 1 lado a lado, unos 4 frente a una carta, 8 de memoria.</translation>
    </message>
    <message>
        <source>Lower fringe</source>
        <comment>setting.whole_order</comment>
        <translation>Franja inferior</translation>
    </message>
    <message>
        <source>Whole order below the place (turning).</source>
        <comment>setting.whole_order.help</comment>
        <translation>Orden entero bajo el punto (giro).</translation>
    </message>
    <message>
        <source>Lower fringe came</source>
        <comment>setting.lower_came</comment>
        <translation>Llegó la franja inferior</translation>
    </message>
    <message>
        <source>One way round (turning).</source>
        <comment>setting.lower_came.help</comment>
        <translation>En un sentido (giro).</translation>
    </message>
    <message>
        <source>By a turn of</source>
        <comment>setting.lower_deg</comment>
        <translation>Con un giro de</translation>
    </message>
    <message>
        <source>Analyser's turn (turning).</source>
        <comment>setting.lower_deg.help</comment>
        <translation>Giro del analizador (giro).</translation>
    </message>
    <message>
        <source>Higher fringe came</source>
        <comment>setting.higher_came</comment>
        <translation>Llegó la franja superior</translation>
    </message>
    <message>
        <source>The other way round (turning).</source>
        <comment>setting.higher_came.help</comment>
        <translation>En el otro sentido (giro).</translation>
    </message>
    <message>
        <source>By a turn of</source>
        <comment>setting.higher_deg</comment>
        <translation>Con un giro de</translation>
    </message>
    <message>
        <source>Analyser's turn (turning).</source>
        <comment>setting.higher_deg.help</comment>
        <translation>Giro del analizador (giro).</translation>
    </message>
    <message>
        <source>Turn within</source>
        <comment>setting.turn_tol_deg</comment>
        <translation>Giro ±</translation>
    </message>
    <message>
        <source>How closely dark is found, to both sides.</source>
        <comment>setting.turn_tol_deg.help</comment>
        <translation>Con qué precisión se halla lo oscuro, hacia ambos lados.</translation>
    </message>
    <message>
        <source>Glass</source>
        <comment>setting.glass</comment>
        <translation>Vidrio</translation>
    </message>
    <message>
        <source>What the piece is made of.</source>
        <comment>setting.glass.help</comment>
        <translation>De qué está hecha la pieza.</translation>
    </message>
    <message>
        <source>Borosilicate</source>
        <comment>choice.glass.borosilicate</comment>
        <translation>Borosilicato</translation>
    </message>
    <message>
        <source>Fused silica</source>
        <comment>choice.glass.fused-silica</comment>
        <translation>Sílice fundida</translation>
    </message>
    <message>
        <source>Lead crystal</source>
        <comment>choice.glass.lead-crystal</comment>
        <translation>Cristal de plomo</translation>
    </message>
    <message>
        <source>Soda lime</source>
        <comment>choice.glass.soda-lime</comment>
        <translation>Sodocálcico</translation>
    </message>
    <message>
        <source>Path</source>
        <comment>setting.path_mm</comment>
        <translation>Camino</translation>
    </message>
    <message>
        <source>Way of the light through the glass.</source>
        <comment>setting.path_mm.help</comment>
        <translation>Camino de la luz en el vidrio.</translation>
    </message>
    <message>
        <source>Path within</source>
        <comment>setting.path_tol_pct</comment>
        <translation>Camino ±</translation>
    </message>
    <message>
        <source>To both sides.</source>
        <comment>setting.path_tol_pct.help</comment>
        <translation>Hacia ambos lados.</translation>
    </message>
    <message>
        <source>Retardation</source>
        <comment>retardation</comment>
        <translation>Retardo</translation>
    </message>
    <message>
        <source>It is this one</source>
        <comment>odds_of_it</comment>
        <translation>Es este</translation>
    </message>
    <message>
        <source>Order</source>
        <comment>order</comment>
        <translation>Orden</translation>
    </message>
    <message>
        <source>Stress (difference)</source>
        <comment>stress</comment>
        <translation>Tensión (diferencia)</translation>
    </message>
    <message>
        <source>{colour}, order {order:.1f}: {low:.0f} to {high:.0f} nm, that is a stress of {weak:.2g} to {strong:.2g} MPa along {path:g} mm of glass.</source>
        <comment>one</comment>
        <translation>{colour}, orden {order:.1f}: de {low:.0f} a {high:.0f} nm, es decir, una tensión de {weak:.2g} a {strong:.2g} MPa en {path:g} mm de vidrio.</translation>
    </message>
    <message>
        <source>Two or more retardations show this colour: {list}. Look again with the tint plate, once where it adds and once where it takes away.</source>
        <comment>several</comment>
        <translation>Dos o más retardos muestran este color: {list}. Mire otra vez con la lámina de onda, una donde suma y otra donde resta.</translation>
    </message>
    <message>
        <source>The tint plate has told them apart.</source>
        <comment>told_apart</comment>
        <translation>La lámina de onda los ha distinguido.</translation>
    </message>
    <message>
        <source>Near black a colour says little: put the tint plate in, which turns a few nm into blue or yellow.</source>
        <comment>dark</comment>
        <translation>Cerca del negro un color dice poco: ponga la lámina de onda, que vuelve azul o amarillo unos pocos nm.</translation>
    </message>
    <message>
        <source>{order:.2f} orders of {wave:.0f} nm: {low:.0f} to {high:.0f} nm, that is a stress of {weak:.2g} to {strong:.2g} MPa along {path:g} mm of glass.</source>
        <comment>turned</comment>
        <translation>{order:.2f} órdenes de {wave:.0f} nm: de {low:.0f} a {high:.0f} nm, es decir, una tensión de {weak:.2g} a {strong:.2g} MPa en {path:g} mm de vidrio.</translation>
    </message>
    <message>
        <source>Which of both directions is pulled, a colour alone does not tell; the plate does: where it adds, its slow axis lies along the larger pull.</source>
        <comment>which</comment>
        <translation>Cuál de las dos direcciones está traccionada no lo dice el color solo; la lámina sí: donde suma, su eje lento sigue la tracción mayor.</translation>
    </message>
    <message>
        <source>What shows this colour</source>
        <comment>candidates</comment>
        <translation>Qué muestra este color</translation>
    </message>
    <message>
        <source>from</source>
        <comment>low</comment>
        <translation>de</translation>
    </message>
    <message>
        <source>most likely</source>
        <comment>middle</comment>
        <translation>lo más probable</translation>
    </message>
    <message>
        <source>to</source>
        <comment>high</comment>
        <translation>a</translation>
    </message>
    <message>
        <source>stress from</source>
        <comment>weak</comment>
        <translation>tensión de</translation>
    </message>
    <message>
        <source>to</source>
        <comment>strong</comment>
        <translation>a</translation>
    </message>
    <message>
        <source>odds</source>
        <comment>odds</comment>
        <translation>probabilidad</translation>
    </message>
    <message>
        <source>plain</source>
        <comment>bare_word</comment>
        <translation>corriente</translation>
    </message>
    <message>
        <source>plate adds</source>
        <comment>adds_word</comment>
        <translation>la lámina suma</translation>
    </message>
    <message>
        <source>plate takes away</source>
        <comment>takes_word</comment>
        <translation>la lámina resta</translation>
    </message>
    <message>
        <source>The chart: colours by retardation, without the plate</source>
        <comment>chart</comment>
        <translation>La carta: colores según el retardo, sin la lámina</translation>
    </message>
    <message>
        <source>With the plate, where it adds</source>
        <comment>chart_adds</comment>
        <translation>Con la lámina, donde suma</translation>
    </message>
    <message>
        <source>With the plate, where it takes away</source>
        <comment>chart_takes</comment>
        <translation>Con la lámina, donde resta</translation>
    </message>
    <message>
        <source>The stress is the difference of the two principal stresses, averaged along the light, and as if it were the same all the way.</source>
        <comment>limit_difference</comment>
        <translation>La tensión es la diferencia de las dos tensiones principales, promediada en el camino de la luz, como si fuera igual en todo él.</translation>
    </message>
    <message>
        <source>The stress lies at 45 degrees to the polarizers: elsewhere the colour is the same but darker, and along them there is none.</source>
        <comment>limit_axis</comment>
        <translation>La tensión está a 45 grados de los polarizadores: en otras direcciones el color es igual pero más oscuro, y a lo largo de ellos no lo hay.</translation>
    </message>
    <message>
        <source>The glass's own dispersion of birefringence and the projector's or camera's colours are left out; beyond the third order colours are too pale to trust.</source>
        <comment>limit_dispersion</comment>
        <translation>No se cuentan la dispersión de la birrefringencia del vidrio ni los colores del proyector o la cámara; más allá del tercer orden los colores son demasiado pálidos.</translation>
    </message>
    <message>
        <source>How closely eyes match a colour is a guess that you state; the ranges follow it, and the coefficient of the glass within 3 %.</source>
        <comment>limit_match</comment>
        <translation>Con qué precisión igualan los ojos un color es una estimación suya; los intervalos la siguen, y el coeficiente del vidrio al 3 %.</translation>
    </message>
    <message>
        <source>The polarizers must lie along and across the stress, with quarter-wave plates for that colour, or one quarter-wave plate along the polarizer (Sénarmont).</source>
        <comment>limit_turning</comment>
        <translation>Los polarizadores deben estar a lo largo y a través de la tensión, con láminas de cuarto de onda para ese color, o una a lo largo del polarizador (Sénarmont).</translation>
    </message>
</context>
<context>
    <name>bench.matching</name>
    <message>
        <source>Which cooling, flame or thickness does my real piece have, by three readings of it?</source>
        <comment>help</comment>
        <translation>¿Qué enfriamiento, llama o espesor tiene mi pieza real, según tres lecturas?</translation>
    </message>
    <message>
        <source>Unknown</source>
        <comment>setting.unknown</comment>
        <translation>Desconocido</translation>
    </message>
    <message>
        <source>jets: cooling of a toughened plate; thickness: of such a plate; flame: a burner's.</source>
        <comment>setting.unknown.help</comment>
        <translation>chorros: enfriamiento de una placa templada; espesor: de una así; llama: la de un quemador.</translation>
    </message>
    <message>
        <source>Jets</source>
        <comment>choice.unknown.jets</comment>
        <translation>Chorros</translation>
    </message>
    <message>
        <source>Thickness</source>
        <comment>choice.unknown.thickness</comment>
        <translation>Espesor</translation>
    </message>
    <message>
        <source>Flame</source>
        <comment>choice.unknown.flame</comment>
        <translation>Llama</translation>
    </message>
    <message>
        <source>Glass</source>
        <comment>setting.glass</comment>
        <translation>Vidrio</translation>
    </message>
    <message>
        <source>What the piece is made of.</source>
        <comment>setting.glass.help</comment>
        <translation>De qué está hecha la pieza.</translation>
    </message>
    <message>
        <source>Borosilicate</source>
        <comment>choice.glass.borosilicate</comment>
        <translation>Borosilicato</translation>
    </message>
    <message>
        <source>Fused silica</source>
        <comment>choice.glass.fused-silica</comment>
        <translation>Sílice fundida</translation>
    </message>
    <message>
        <source>Lead crystal</source>
        <comment>choice.glass.lead-crystal</comment>
        <translation>Cristal de plomo</translation>
    </message>
    <message>
        <source>Soda lime</source>
        <comment>choice.glass.soda-lime</comment>
        <translation>Sodocálcico</translation>
    </message>
    <message>
        <source>Thickness</source>
        <comment>setting.thickness_mm</comment>
        <translation>Espesor</translation>
    </message>
    <message>
        <source>Of the plate, or the bottle's wall.</source>
        <comment>setting.thickness_mm.help</comment>
        <translation>De la placa, o de la pared de la botella.</translation>
    </message>
    <message>
        <source>Start</source>
        <comment>setting.start_C</comment>
        <translation>Inicio</translation>
    </message>
    <message>
        <source>Heat when the jets start (jets, thickness).</source>
        <comment>setting.start_C.help</comment>
        <translation>Temperatura al empezar los chorros (chorros, espesor).</translation>
    </message>
    <message>
        <source>Jets</source>
        <comment>setting.jet_W_m2K</comment>
        <translation>Chorros</translation>
    </message>
    <message>
        <source>Known cooling (thickness).</source>
        <comment>setting.jet_W_m2K.help</comment>
        <translation>Enfriamiento conocido (espesor).</translation>
    </message>
    <message>
        <source>Diameter</source>
        <comment>setting.outer_diameter_mm</comment>
        <translation>Diámetro</translation>
    </message>
    <message>
        <source>Of the bottle over the burner (flame).</source>
        <comment>setting.outer_diameter_mm.help</comment>
        <translation>De la botella sobre el quemador (llama).</translation>
    </message>
    <message>
        <source>Flame width</source>
        <comment>setting.ring_width_mm</comment>
        <translation>Anchura de la llama</translation>
    </message>
    <message>
        <source>At half its heat (flame).</source>
        <comment>setting.ring_width_mm.help</comment>
        <translation>A la mitad de su calor (llama).</translation>
    </message>
    <message>
        <source>First reading</source>
        <comment>setting.first_reading</comment>
        <translation>Primera lectura</translation>
    </message>
    <message>
        <source>Squeeze at the surface, MPa; or °C at first time.</source>
        <comment>setting.first_reading.help</comment>
        <translation>Compresión en la superficie, MPa; o °C en el primer tiempo.</translation>
    </message>
    <message>
        <source>Second reading</source>
        <comment>setting.second_reading</comment>
        <translation>Segunda lectura</translation>
    </message>
    <message>
        <source>Pull in the middle, MPa; or °C at second time.</source>
        <comment>setting.second_reading.help</comment>
        <translation>Tracción en el centro, MPa; o °C en el segundo tiempo.</translation>
    </message>
    <message>
        <source>Third reading</source>
        <comment>setting.third_reading</comment>
        <translation>Tercera lectura</translation>
    </message>
    <message>
        <source>Edge-on at the skin in 15 mm of glass, nm; for thickness, depth without stress in µm; or °C at the third time.</source>
        <comment>setting.third_reading.help</comment>
        <translation>Por el canto, en la piel, en 15 mm de vidrio, nm; para el espesor, la profundidad sin tensión en µm; o °C en el tercer tiempo.</translation>
    </message>
    <message>
        <source>First time</source>
        <comment>setting.first_s</comment>
        <translation>Primer tiempo</translation>
    </message>
    <message>
        <source>After the flame's start (flame).</source>
        <comment>setting.first_s.help</comment>
        <translation>Desde el inicio de la llama (llama).</translation>
    </message>
    <message>
        <source>Second time</source>
        <comment>setting.second_s</comment>
        <translation>Segundo tiempo</translation>
    </message>
    <message>
        <source>The same.</source>
        <comment>setting.second_s.help</comment>
        <translation>Lo mismo.</translation>
    </message>
    <message>
        <source>Third time</source>
        <comment>setting.third_s</comment>
        <translation>Tercer tiempo</translation>
    </message>
    <message>
        <source>The same.</source>
        <comment>setting.third_s.help</comment>
        <translation>Lo mismo.</translation>
    </message>
    <message>
        <source>Readings within</source>
        <comment>setting.reading_pct</comment>
        <translation>Lecturas ±</translation>
    </message>
    <message>
        <source>Two of three readings are this close to the truth.</source>
        <comment>setting.reading_pct.help</comment>
        <translation>Dos de tres lecturas están así de cerca de la verdad.</translation>
    </message>
    <message>
        <source>Instrument within</source>
        <comment>setting.bias_pct</comment>
        <translation>Aparato ±</translation>
    </message>
    <message>
        <source>What all readings are off together.</source>
        <comment>setting.bias_pct.help</comment>
        <translation>Lo que se desvían juntas todas las lecturas.</translation>
    </message>
    <message>
        <source>Model within</source>
        <comment>setting.model_pct</comment>
        <translation>Modelo ±</translation>
    </message>
    <message>
        <source>How far the model itself may be off.</source>
        <comment>setting.model_pct.help</comment>
        <translation>Cuánto puede desviarse el propio modelo.</translation>
    </message>
    <message>
        <source>Cooling coefficient of the jets</source>
        <comment>jets</comment>
        <translation>Coeficiente de enfriamiento de los chorros</translation>
    </message>
    <message>
        <source>Thickness</source>
        <comment>thickness</comment>
        <translation>Espesor</translation>
    </message>
    <message>
        <source>Heat of the flame</source>
        <comment>flame</comment>
        <translation>Calor de la llama</translation>
    </message>
    <message>
        <source>If all is as stated, three readings fit that badly or worse {chance:.0f} times in 100.</source>
        <comment>chance</comment>
        <translation>Si todo es como se indica, tres lecturas encajan así de mal o peor {chance:.0f} de cada 100 veces.</translation>
    </message>
    <message>
        <source>{name}: {value:.3g} {unit}, from {low:.3g} to {high:.3g} with 95 %.</source>
        <comment>found</comment>
        <translation>{name}: {value:.3g} {unit}, de {low:.3g} a {high:.3g} al 95 %.</translation>
    </message>
    <message>
        <source>{name}: {value:.3g} {unit}, but anything from {low:.3g} to {high:.3g} suits. Read again, or more closely.</source>
        <comment>wide</comment>
        <translation>{name}: {value:.3g} {unit}, pero vale cualquiera de {low:.3g} a {high:.3g}. Lea otra vez, o con más precisión.</translation>
    </message>
    <message>
        <source>These readings do not tell: everything from {low:.3g} to {high:.3g} {unit} suits them.</source>
        <comment>nothing</comment>
        <translation>Estas lecturas no lo dicen: les vale todo de {low:.3g} a {high:.3g} {unit}.</translation>
    </message>
    <message>
        <source>The readings contradict each other, or the model; at best {value:.3g} {unit}, perhaps {low:.3g} to {high:.3g}. Check the readings, and what is stated beside them.</source>
        <comment>inconsistent</comment>
        <translation>Las lecturas se contradicen, o contradicen el modelo; en el mejor caso {value:.3g} {unit}, quizá de {low:.3g} a {high:.3g}. Revise las lecturas y lo indicado junto a ellas.</translation>
    </message>
    <message>
        <source>Several values suit, between {low:.3g} and {high:.3g} {unit}. Read something else as well.</source>
        <comment>several</comment>
        <translation>Valen varios valores, entre {low:.3g} y {high:.3g} {unit}. Lea también otra cosa.</translation>
    </message>
    <message>
        <source>At most {high:.3g} {unit}; how little these readings do not tell.</source>
        <comment>open_low</comment>
        <translation>Como mucho {high:.3g} {unit}; cuán poco, estas lecturas no lo dicen.</translation>
    </message>
    <message>
        <source>At least {low:.3g} {unit}; how much these readings do not tell.</source>
        <comment>open_high</comment>
        <translation>Al menos {low:.3g} {unit}; cuánto, estas lecturas no lo dicen.</translation>
    </message>
    <message>
        <source>It may be kept as a device of this site.</source>
        <comment>usable</comment>
        <translation>Puede guardarse como aparato de este centro.</translation>
    </message>
    <message>
        <source>Do not keep it as a device: it is not known well enough.</source>
        <comment>not_usable</comment>
        <translation>No lo guarde como aparato: no se conoce lo bastante bien.</translation>
    </message>
    <message>
        <source>Readings beside the fitted model</source>
        <comment>compared</comment>
        <translation>Lecturas junto al modelo ajustado</translation>
    </message>
    <message>
        <source>reading</source>
        <comment>reading</comment>
        <translation>lectura</translation>
    </message>
    <message>
        <source>read</source>
        <comment>read</comment>
        <translation>leído</translation>
    </message>
    <message>
        <source>model</source>
        <comment>fitted</comment>
        <translation>modelo</translation>
    </message>
    <message>
        <source>apart by (of its doubt)</source>
        <comment>pull</comment>
        <translation>apartado (en incertidumbres)</translation>
    </message>
    <message>
        <source>squeeze at the surface, MPa</source>
        <comment>surface_MPa</comment>
        <translation>compresión en la superficie, MPa</translation>
    </message>
    <message>
        <source>pull in the middle, MPa</source>
        <comment>centre_MPa</comment>
        <translation>tracción en el centro, MPa</translation>
    </message>
    <message>
        <source>edge-on at the skin, nm</source>
        <comment>edge_nm</comment>
        <translation>de canto en la piel, nm</translation>
    </message>
    <message>
        <source>depth without stress, µm</source>
        <comment>neutral_um</comment>
        <translation>profundidad sin tensión, µm</translation>
    </message>
    <message>
        <source>°C at the first time</source>
        <comment>first_C</comment>
        <translation>°C en el primer tiempo</translation>
    </message>
    <message>
        <source>°C at the second time</source>
        <comment>second_C</comment>
        <translation>°C en el segundo tiempo</translation>
    </message>
    <message>
        <source>°C at the third time</source>
        <comment>third_C</comment>
        <translation>°C en el tercer tiempo</translation>
    </message>
    <message>
        <source>unknown</source>
        <comment>unknown</comment>
        <translation>desconocido</translation>
    </message>
    <message>
        <source>reading</source>
        <comment>modelled</comment>
        <translation>lectura</translation>
    </message>
    <message>
        <source>Least squares for one unknown; everything else is taken as stated. The interval holds the truth in 95 of 100 cases if the uncertainties are as stated.</source>
        <comment>limit_fit</comment>
        <translation>Mínimos cuadrados para una incógnita; lo demás se toma como se indica. El intervalo contiene la verdad en 95 de 100 casos si las incertidumbres son las indicadas.</translation>
    </message>
    <message>
        <source>The plate is wide and cooled alike on both faces.</source>
        <comment>limit_plate</comment>
        <translation>La placa es ancha y se enfría igual por ambas caras.</translation>
    </message>
    <message>
        <source>Temperatures are those of the outside in the middle of the ring, of a bottle that turns, while the flame burns.</source>
        <comment>limit_burner</comment>
        <translation>Las temperaturas son las del exterior, en el centro del anillo de una botella que gira, con la llama encendida.</translation>
    </message>
</context>
</TS>
